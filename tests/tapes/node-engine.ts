import { mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createWorker, PSM } from 'tesseract.js';
import { slimData } from '../../.ci/engine.mjs';
import type { PageSymbol, ReadPage } from '../../src/tape/characters/read-page.ts';
import { pgmOf } from '../../src/tape/picture/pgm.ts';

/** The character reader in Node, with the very data the app ships. */
export async function nodeEngine() {
  const langPath = join(tmpdir(), `digits-${process.pid}`);
  mkdirSync(langPath, { recursive: true });
  writeFileSync(join(langPath, 'eng.traineddata.gz'), slimData());
  const worker = await createWorker('eng', 1, { langPath, cacheMethod: 'none', gzip: true });
  await worker.setParameters({
    tessedit_pageseg_mode: PSM.SINGLE_BLOCK,
    tessedit_char_whitelist: '0123456789 ',
    user_defined_dpi: '150',
  });
  let spent = 0;
  const readPage: ReadPage = async (page) => {
    const start = performance.now();
    const { data } = await worker.recognize(Buffer.from(pgmOf(page)), {}, { blocks: true });
    spent += performance.now() - start;
    return symbolsIn(data.blocks ?? []);
  };
  return {
    readPage,
    spentMs: () => spent,
    close: () => worker.terminate(),
  };
}

/** The engine as it comes, with all of its language data and its own settings: what reading is compared with. */
export async function plainEngine() {
  const data = createRequire(import.meta.url).resolve(
    '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz',
  );
  return createWorker('eng', 1, { langPath: dirname(data), cacheMethod: 'none', gzip: true });
}

type Blocks = NonNullable<
  Awaited<ReturnType<Awaited<ReturnType<typeof createWorker>>['recognize']>>['data']['blocks']
>;

function symbolsIn(blocks: Blocks): PageSymbol[] {
  return blocks
    .flatMap(({ paragraphs }) => paragraphs)
    .flatMap(({ lines }) => lines)
    .flatMap(({ words }) => words)
    .flatMap(({ symbols }) => symbols)
    .map(({ text, confidence, bbox }) => ({ text, confidence, ...bbox }));
}
