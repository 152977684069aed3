import { vi } from 'vitest';

type State = 'installing' | 'installed' | 'activated' | 'redundant';

/** A service worker that does as it is told. */
export class StandInWorker extends EventTarget {
  scriptURL = new URL('./sw.js', location.href).href;
  state: State = 'installing';
  asked: unknown[] = [];
  answers = true;
  /** How many pages are open besides: it takes over only where it may with them. */
  others = 0;

  become(state: State): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }

  postMessage(message: { onlyIfAlone: boolean }, [port]: readonly MessagePort[]): void {
    this.asked.push(message);
    if (this.answers) port?.postMessage(!message.onlyIfAlone || this.others === 0);
  }
}

class StandInRegistration extends EventTarget {
  installing: StandInWorker | null = null;
  waiting: StandInWorker | null = null;
  active: StandInWorker | null = null;
  update = vi.fn(async () => undefined);

  /** A worker was found and starts to install. */
  find(): StandInWorker {
    const found = new StandInWorker();
    this.installing = found;
    this.dispatchEvent(new Event('updatefound'));
    return found;
  }
}

/** `navigator.serviceWorker` of a phone at whatever point of a worker's life. */
export class StandInWorkers extends EventTarget {
  controller: StandInWorker | null = null;
  registration = new StandInRegistration();
  register = vi.fn(async (_url: string, _options: RegistrationOptions) => this.registration);
  #isReady: (registration: StandInRegistration) => void = () => undefined;
  ready = new Promise<StandInRegistration>((done) => {
    this.#isReady = done;
  });

  /** A phone that has been here before: a worker is in charge. */
  static controlled(): StandInWorkers {
    const workers = new StandInWorkers();
    const worker = new StandInWorker();
    worker.state = 'activated';
    workers.registration.active = worker;
    workers.controller = worker;
    workers.#isReady(workers.registration);
    return workers;
  }

  /** A worker has everything and takes the page. */
  claim(worker: StandInWorker): void {
    worker.become('activated');
    this.registration.installing = null;
    this.registration.waiting = null;
    this.registration.active = worker;
    this.controller = worker;
    this.#isReady(this.registration);
    this.dispatchEvent(new Event('controllerchange'));
  }

  /** A newer worker has everything and waits. */
  wait(worker: StandInWorker): void {
    this.registration.installing = null;
    this.registration.waiting = worker;
    worker.become('installed');
  }
}
