/**
 * Why a picture could not be looked at, though nothing is wrong with what is in it.
 * - `engine-missing`: the files that read numbers are not on the phone and can't be fetched;
 * - `engine-refused`: the browser does not run WebAssembly;
 * - `engine-failed`: the engine broke, or didn't answer in time;
 * - `reader-failed`: the reader broke, or its script didn't arrive;
 * - `reader-slow`: the reader said nothing for too long.
 */
export type TapeFault =
  | 'engine-missing'
  | 'engine-refused'
  | 'engine-failed'
  | 'reader-failed'
  | 'reader-slow';

export class TapeError extends Error {
  readonly fault: TapeFault;

  constructor(fault: TapeFault, detail = '') {
    super(`tape reader: ${fault} ${detail}`);
    this.name = 'TapeError';
    this.fault = fault;
  }
}
