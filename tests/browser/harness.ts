import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { findChromium } from '../../.ci/chromium.mjs';
import type { Bench } from '../../src/calculation/bench.ts';
import { watchRequests } from './settled.ts';

/** The two screens everything is tried on, in CSS pixels. */
export const PHONE = { width: 390, height: 844 };
export const SMALL_PHONE = { width: 360, height: 640 };

/**
 * Parts of the browser's own window that no test sees: pages for its address bar start with every
 * phone and took half of the processor. The last list given counts, so playwright's own that
 * bear on a page are named again.
 */
const UNSEEN = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
  'SpareRendererForSitePerProcess',
];
const PLAYWRIGHT_WITHOUT = [
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'LensOverlay',
  'MediaRouter',
  'OptimizationHints',
  'NetworkTimeServiceQuerying',
  'AimEnabled',
  'PreconnectToSearch',
];

/** How every Chromium of the tests is started, this one or one that is killed. */
export const FLAGS = [
  `--disable-features=${[...PLAYWRIGHT_WITHOUT, ...UNSEEN].join()}`,
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface Opening {
  /** The route, with its `#`. */
  at?: string;
  size?: { width: number; height: number };
  /** What the phone is set to; the bench may say otherwise. */
  colours?: 'light' | 'dark';
  /** Settings kept on the device before the app starts; those left out are as new. */
  bench?: Partial<Bench>;
  serviceWorkers?: 'allow' | 'block';
}

export interface OpenApp {
  page: Page;
  context: BrowserContext;
  /** What no page of ours may do: an error on the console, a request to another origin. */
  complaints: string[];
  close(): Promise<void>;
}

/** How long anything may take on a machine that has other things to do; nothing waits for it to pass. */
const PATIENCE_MS = 90_000;

/**
 * Starts the Chromium that set-up found.
 * @param flags what else it is started with
 * @param without which of playwright's own flags are left out
 */
export async function launchBrowser(
  flags: readonly string[] = [],
  without: string[] = [],
): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('no Chromium: `node .ci/setup.mjs --browser` finds one');
  return chromium.launch({
    executablePath,
    args: [...FLAGS, ...flags],
    ignoreDefaultArgs: without,
  });
}

/** Opens the app as a phone would: a fresh device with touch, nothing kept on it but `bench`. */
export async function openApp(
  browser: Browser,
  address: string,
  opening: Opening = {},
): Promise<OpenApp> {
  const phone = await takePhone(browser, address, opening);
  await phone.page.goto(address + (opening.at ?? ''));
  return phone;
}

/** The phone of `openApp`, before the app has been opened on it. */
export async function takePhone(
  browser: Browser,
  address: string,
  { size = PHONE, colours = 'light', bench, serviceWorkers = 'allow' }: Opening,
): Promise<OpenApp> {
  const context = await browser.newContext({
    viewport: size,
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    colorScheme: colours,
    serviceWorkers,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  const complaints = collectComplaints(context, address);
  const page = await newPage(context);
  if (bench) await putBench(page, address, bench);
  return { page, context, complaints, close: () => context.close() };
}

/** Pages whose renderer is gone: the browser lets nothing more be done with one. */
const crashed = new WeakSet<Page>();

async function newPage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  page.on('crash', () => crashed.add(page));
  watchRequests(page);
  return page;
}

/**
 * Opens the app on a phone that has been used before as on a new one, with nothing kept and no
 * complaint: a new one takes the processor's time, and many screens are looked at. Only one without
 * service workers can be had again; what its browser has fetched it still has. A page that crashed
 * is another one then.
 */
export async function openAnew(
  phone: OpenApp,
  address: string,
  { at = '', size = PHONE, bench }: Opening = {},
): Promise<Page> {
  const { context, complaints } = phone;
  if (crashed.has(phone.page)) {
    await phone.page.close();
    phone.page = await newPage(context);
  }
  const { page } = phone;
  await page.goto('about:blank');
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', {
    origin: new URL(address).origin,
    storageTypes: 'all',
  });
  await session.detach();
  await page.setViewportSize(size);
  complaints.length = 0;
  if (bench) await putBench(page, address, bench);
  await page.goto(address + at);
  return page;
}

/** Settings as they are kept on a device, before the app is started on it. */
async function putBench(page: Page, address: string, bench: Partial<Bench>): Promise<void> {
  // The app's origin without the app; its icon is named, or the browser would ask for one.
  const blank = `${address}blank`;
  await page.route(blank, (route) =>
    route.fulfill({ contentType: 'text/html', body: '<link rel="icon" href="data:,">' }),
  );
  await page.goto(blank);
  await page.evaluate(keepBench, bench);
  await page.unroute(blank);
}

/** Writes the record src/storage/store.ts would. Runs in the page. */
function keepBench(bench: Partial<Bench>): Promise<void> {
  return new Promise((kept, failed) => {
    const opening = indexedDB.open('thumbrule', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('bench');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction('bench', 'readwrite');
      change.objectStore('bench').put(bench, 'settings');
      change.onerror = () => failed(change.error);
      change.oncomplete = () => {
        opening.result.close();
        kept();
      };
    };
  });
}

function collectComplaints(context: BrowserContext, address: string): string[] {
  const complaints: string[] = [];
  const { origin } = new URL(address);
  context.on('console', (message) => {
    if (message.type() === 'error')
      complaints.push(`console: ${message.text()} ${message.location().url}`);
  });
  context.on('weberror', (error) => complaints.push(`error: ${error.error()}`));
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (/^(http|ws)/.test(url.protocol) && url.origin !== origin) {
      complaints.push(`asked another origin: ${url}`);
    }
  });
  return complaints;
}

/** Makes the page's processor `times` slower than this machine's. */
export async function slowDown(page: Page, times: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/** As src/app/start/theme.ts does; that the setting leads there is tried with the settings. */
export async function wear(page: Page, theme: Bench['theme']): Promise<void> {
  await page.evaluate((worn) => {
    document.documentElement.dataset.theme = worn;
  }, theme);
}

/** Waits until the service worker has everything and is in charge of the page. */
export async function waitUntilKept(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}
