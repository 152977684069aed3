import { BaseSequencer } from 'vitest/node';

/**
 * In which order files are tried, so that no core waits at the end: what needs the built app comes
 * last, as it is being built meanwhile, and the longest of a part come first. A fresh clone knows
 * nothing of earlier runs, so the longest are named; of the others a longer file is taken to be
 * the longer test.
 */
const PARTS = ['structure', 'unit', 'dom', 'apart', 'browser'];
const LONGEST = [
  ...['structure/types', 'tapes/reader', 'tapes/live', 'reader/read-tape', 'tapes/tape-report'],
  ...['live/live', 'touch/touch-spread', 'workers/pdf', 'calculations/outputs', 'formulas'],
  ...['browser/everyone', 'browser/tape', 'browser/three-garments', 'browser/offline'],
  ...['built/budget', 'by-keyboard', 'reading-kept', 'paper', 'browser/glass', 'going-back'],
  ...['many-photos', 'tape-stalls', 'second-language', 'lower-half', 'browser/garments'],
].map((name) => `${name}.test.`);

export default class Order extends BaseSequencer {
  /**
   * @override
   * @param {import('vitest/node').TestSpecification[]} files
   */
  async sort(files) {
    const bySize = await super.sort(files);
    /** @param {import('vitest/node').TestSpecification} file */
    const place = ({ project, moduleId }) => {
      const named = LONGEST.findIndex((name) => moduleId.includes(name));
      return [PARTS.indexOf(project.name), named < 0 ? LONGEST.length : named];
    };
    return bySize.sort((one, other) => {
      const [[part = 0, long = 0], [otherPart = 0, otherLong = 0]] = [place(one), place(other)];
      return part - otherPart || long - otherLong;
    });
  }
}
