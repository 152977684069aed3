import { afterEach, expect, test, vi } from 'vitest';
import { keepAwake } from '../../../src/app/start/awake.ts';
import { showTheme } from '../../../src/app/start/theme.ts';
import { speak } from '../../../src/app/start/voice.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  Reflect.deleteProperty(navigator, 'wakeLock');
});

const settled = () => new Promise((done) => setTimeout(done));

function phoneWith(request: () => Promise<unknown>) {
  Object.defineProperty(navigator, 'wakeLock', { value: { request }, configurable: true });
}

test('the screen is kept on until let go, and asked for again when the page comes back', async () => {
  const release = vi.fn(async () => undefined);
  const request = vi.fn(async () => ({ release }));
  phoneWith(request);
  const letGo = keepAwake();
  await settled();
  expect(request).toHaveBeenCalledExactlyOnceWith('screen');
  document.dispatchEvent(new Event('visibilitychange'));
  await settled();
  expect(request).toHaveBeenCalledTimes(2);
  letGo();
  expect(release).toHaveBeenCalledOnce();
  document.dispatchEvent(new Event('visibilitychange'));
  await settled();
  expect(request).toHaveBeenCalledTimes(2);
});

test('let go before the phone has answered, it is let go when it does', async () => {
  const release = vi.fn(async () => undefined);
  phoneWith(async () => ({ release }));
  keepAwake()();
  await settled();
  expect(release).toHaveBeenCalledOnce();
});

test('a phone that refuses, or can’t, is left in peace', async () => {
  phoneWith(() => Promise.reject(new DOMException('low battery', 'NotAllowedError')));
  expect(keepAwake()).not.toThrow();
  await settled();
  Reflect.deleteProperty(navigator, 'wakeLock');
  expect(keepAwake()).not.toThrow();
});

test('a sentence is spoken in place of the one before it; without a voice nothing is', () => {
  expect(() => speak('Hook 1.')).not.toThrow();
  const voice = { cancel: vi.fn(), speak: vi.fn() };
  vi.stubGlobal('speechSynthesis', voice);
  vi.stubGlobal(
    'SpeechSynthesisUtterance',
    class {
      text: string;
      constructor(text: string) {
        this.text = text;
      }
    },
  );
  speak('Hook 2.');
  expect(voice.cancel).toHaveBeenCalledBefore(voice.speak);
  expect(voice.speak.mock.lastCall?.[0]).toMatchObject({ text: 'Hook 2.' });
});

test('the page and the phone’s bars take the theme', () => {
  document.head.innerHTML = '<meta name="theme-color" content="white">';
  document.body.style.backgroundColor = 'rgb(20, 24, 28)';
  showTheme('night');
  expect(document.documentElement.dataset.theme).toBe('night');
  const bars = document.querySelector('meta[name=theme-color]');
  expect(bars?.getAttribute('content')).toBe('rgb(20, 24, 28)');
});
