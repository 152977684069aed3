import { rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Page } from 'playwright-core';
import { CODE, cameraOver } from '../browser/camera-file.ts';
import { openApp } from '../browser/harness.ts';
import { fromLowEdge } from '../tapes/scale-print.ts';
import { kinds, planned, type SceneKind, scene } from '../tapes/scene.ts';
import { median } from './press.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run bench:live`: how many readings a second the camera's picture gives once the tape is
 * held, how long it takes until then, and how far off they are. A hand sways over a drawn tape;
 * `KIND` and `SEED` name another, `SECONDS` how long it is watched. Three a second are wanted.
 */
const { KIND = 'cm tape on cloth', SEED = '3', SECONDS = '10' } = process.env;
/** The sway of a hand: so far along the tape and across it, to both sides, in so long. */
const SWAY = { alongMm: 3, acrossMm: 1, seconds: 4 };
const FRAMES_A_SECOND = 15;
const WANTED = 3;
const LOST_MS = 60_000;

const kind = kinds.find((one) => one === KIND);
if (!kind) throw new Error(`no kind of scene is "${KIND}"; there are: ${kinds.join(', ')}`);
const sway = swayOver(kind, Number(SEED));
const file = cameraOver(scene(kind, Number(SEED)), sway, FRAMES_A_SECOND);
try {
  await withApp(
    async (browser, address) => {
      const app = await openApp(browser, address, {
        at: '#/tape',
        bench: { unit: 'mm' },
        serviceWorkers: 'block',
      });
      const seen = await watched(app.page);
      for (const fault of app.complaints) console.log(`  ${fault}`);
      await app.close();
      report(seen);
    },
    [
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${file}`,
    ],
  );
} finally {
  await rm(dirname(file), { recursive: true });
}

/** Where the middle of each frame is, and what the tape says there. */
function swayOver(kind: SceneKind, seed: number) {
  const { bodies, truth } = planned(kind, seed);
  const [seen] = truth.scales;
  const body = bodies.find(({ spec }) => spec.scales.some(({ id }) => id === seen?.id));
  const scale = body?.spec.scales.find(({ id }) => id === seen?.id);
  if (!seen || !body || !scale) throw new Error(`no scale is seen in ${kind} ${seed}`);
  const middle = (seen.visibleFromMm + seen.visibleToMm) / 2;
  const row = fromLowEdge(scale, scale.inset + (scale.lines.at(-1)?.mm ?? 0) / 2, body.spec.width);
  const frames = SWAY.seconds * FRAMES_A_SECOND;
  return Array.from({ length: frames }, (_, frame) => {
    const turn = (2 * Math.PI * frame) / frames;
    const mm = middle + SWAY.alongMm * Math.sin(turn);
    const across = row + SWAY.acrossMm * Math.sin(2 * turn);
    return { mm, ...body.see(scale.zero + scale.direction * mm, across) };
  });
}

/** A frame the app has looked at. */
interface Looked {
  /** Its number in the camera's file. */
  frame: number;
  /** Milliseconds since the screen was opened, when the next one was taken. */
  at: number;
  /** The number shown by then. */
  shown: string;
}

async function watched(page: Page): Promise<Looked[]> {
  await page.getByText('Live').waitFor();
  const looks = await page.evaluateHandle(watchFrames, CODE);
  await page.getByText('Live').tap();
  const number = page.locator('.told.live .number span');
  await number.waitFor({ timeout: LOST_MS }).catch(async () => {
    const frames = (await looks.jsonValue()).length;
    const said = await page.getByRole('status').textContent();
    throw new Error(`not held in ${LOST_MS / 1000} s, after ${frames} frames; said: ${said}`);
  });
  await page.waitForTimeout(1000 * Number(SECONDS));
  return looks.jsonValue();
}

/**
 * Runs in the page. The app takes a frame only when it is done with the one before, so what
 * is shown whenever it takes one is what the one before gave.
 */
function watchFrames({ bits, side }: typeof CODE): Looked[] {
  const looks: Looked[] = [];
  const opened = performance.now();
  let last: number | undefined;
  const pen = CanvasRenderingContext2D.prototype;
  const draw = pen.drawImage;
  pen.drawImage = function (this: CanvasRenderingContext2D, ...given: unknown[]) {
    Reflect.apply(draw, this, given);
    if (!(given[0] instanceof HTMLVideoElement)) return;
    const shown = document.querySelector('.told.live .number strong')?.textContent ?? '';
    if (last !== undefined) looks.push({ frame: last, at: performance.now() - opened, shown });
    const { data } = this.getImageData(0, side / 2, bits * side, 1);
    last = 0;
    for (let bit = 0; bit < bits; bit++) {
      const middle = 4 * (bit * side + side / 2);
      if ((data[middle + 2] as number) > (data[middle] as number)) last += 2 ** bit;
    }
  };
  return looks;
}

function report(looks: readonly Looked[]) {
  const held = looks.findIndex(({ shown }) => /\d/.test(shown));
  const first = looks[held];
  if (!first) throw new Error('no frame was looked at after the tape was held');
  const after = looks.slice(held + 1).filter(({ at }) => at - first.at <= 1000 * Number(SECONDS));
  const read = after.filter(({ shown }) => /\d/.test(shown));
  // The same frame looked at twice is no second reading.
  const distinct = read.filter(({ frame }, i) => frame !== read[i - 1]?.frame);
  const errors = distinct.map(({ frame, shown }) =>
    Math.abs(Number.parseFloat(shown) - (sway[frame]?.mm ?? Number.NaN)),
  );
  const rate = distinct.length / Number(SECONDS);
  console.log(
    `${kind} ${SEED}, a hand swaying ${SWAY.alongMm} mm to both sides along it in ${SWAY.seconds} s, ${FRAMES_A_SECOND} frames a second:
held ${(first.at / 1000).toFixed(1)} s after the screen was opened, on frame ${held + 1} of those looked at
${rate.toFixed(1)} readings a second over ${SECONDS} s (wanted: ${WANTED} or more); ${after.length - read.length} of ${after.length} frames gave none
greatest error ${Math.max(...errors).toFixed(2)} mm, median ${median(errors).toFixed(2)} mm; shown to 0.1 mm`,
  );
}
