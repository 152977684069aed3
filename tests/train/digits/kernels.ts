/**
 * The two inner loops of training in WebAssembly, four numbers at a time: written out here, as four
 * times as many cells are learnt in the same time. What they give is what `layers.ts` gives.
 */

/** Everything that is learnt from lies in this memory. */
export interface Kernels {
  /** A fresh piece of the memory, of zeros. */
  room(count: number): Float32Array;
  /**
   * As `convolve`, with weights by their input, outputs beside each other: a multiple of 12 of
   * these, and of 4 samples in a row.
   */
  convolve(
    from: Float32Array,
    weights: Float32Array,
    biases: Float32Array,
    out: Float32Array,
    size: { readonly width: number; readonly height: number; readonly count: number },
  ): void;
  /** `slopes += push · from` and `into += push · weights` over 3 × 3 samples, each of a multiple of 4 numbers. */
  pushBack(
    from: number,
    slopes: number,
    into: number,
    weights: number,
    push: number,
    count: number,
    wide: number,
  ): void;
}

const PAGE = 65_536;
const PAGES = 64;

export function kernels(): Kernels {
  const module = new WebAssembly.Module(Uint8Array.from(moduleBytes()));
  const { exports } = new WebAssembly.Instance(module);
  const memory = exports.memory as WebAssembly.Memory;
  const convolve = exports.convolve as (...numbers: number[]) => void;
  const back = exports.pushBack as (...numbers: number[]) => void;
  let at = 0;
  return {
    room(count) {
      const piece = new Float32Array(memory.buffer, at, count);
      at += 16 * Math.ceil(count / 4);
      if (at > PAGE * PAGES) throw new Error('no room');
      return piece;
    },
    convolve(from, weights, biases, out, { width, height, count }) {
      const places = [from, weights, biases, out].map(({ byteOffset }) => byteOffset);
      convolve(...places, width, height, 4 * count, 4 * biases.length);
    },
    pushBack(from, slopes, into, weights, push, count, wide) {
      back(from, slopes, into, weights, push, 12 * count, 4 * count * wide);
    },
  };
}

const [I32, F32, V128] = [0x7f, 0x7d, 0x7b];

function moduleBytes(): number[] {
  const types = [signature(Array(8).fill(I32)), signature([I32, I32, I32, I32, F32, I32, I32])];
  const names = [named('convolve', 0, 0), named('pushBack', 0, 1), named('memory', 2, 0)];
  return [
    ...[0, 0x61, 0x73, 0x6d, 1, 0, 0, 0],
    ...section(1, listed(types)),
    ...section(3, listed([[0], [1]])),
    ...section(5, [1, 0, ...whole(PAGES)]),
    ...section(7, listed(names)),
    ...section(10, listed([convolveBody(), pushBackBody()])),
  ];
}

/** Four samples in a row and twelve outputs at a time, their sums all in registers. */
function convolveBody(): number[] {
  const [from, weights, biases, out, width, height, inputs, outputs] = [0, 1, 2, 3, 4, 5, 6, 7];
  const [y, x, part, upper, weight, row, end, stride, to] = [8, 9, 10, 11, 12, 13, 14, 15, 16];
  const near = [17, 18, 19, 20] as const;
  const sum = (place: number, third: number) => 21 + 3 * place + third;
  const [loaded, sample] = [[33, 34, 35], 36];
  const each = (make: (place: number, third: number) => number[]) =>
    [0, 1, 2, 3].flatMap((place) => [0, 1, 2].flatMap((third) => make(place, third)));
  return body(
    [
      [13, I32],
      [16, V128],
    ],
    [
      ...set(stride, times(plus(get(width), number(2)), get(inputs))),
      ...counted(y, get(height), 1, [
        ...counted(x, get(width), 4, [
          ...counted(part, get(outputs), 48, [
            ...each((place, third) =>
              set(sum(place, third), load(plus(get(biases), get(part)), 16 * third)),
            ),
            ...set(weight, plus(get(weights), get(part))),
            ...set(
              upper,
              plus(get(from), plus(times(get(y), get(stride)), times(get(x), get(inputs)))),
            ),
            ...counted(row, number(3), 1, [
              ...set(near[0], get(upper)),
              ...[1, 2, 3].flatMap((i) =>
                set(near[i] as number, plus(get(near[i - 1] as number), get(inputs))),
              ),
              ...set(end, get(near[3])),
              ...repeated([
                ...loaded.flatMap((third, i) => set(third, load(get(weight), 16 * i))),
                ...near.flatMap((place, i) => [
                  ...set(sample, splatFrom(get(place))),
                  ...loaded.flatMap((third, j) =>
                    set(sum(i, j), added(get(sum(i, j)), multiplied(get(sample), get(third)))),
                  ),
                  ...set(place, plus(get(place), number(4))),
                ]),
                ...set(weight, plus(get(weight), get(outputs))),
                ...less(get(near[0]), get(end)),
              ]),
              ...set(upper, plus(get(upper), get(stride))),
            ]),
            ...set(
              to,
              plus(
                plus(get(out), get(part)),
                times(plus(times(get(y), get(width)), get(x)), get(outputs)),
              ),
            ),
            ...[0, 1, 2, 3].flatMap((place) => [
              ...[0, 1, 2].flatMap((third) => store(get(to), get(sum(place, third)), 16 * third)),
              ...set(to, plus(get(to), get(outputs))),
            ]),
          ]),
        ]),
      ]),
    ],
  );
}

function pushBackBody(): number[] {
  const [from, slopes, into, weights, push, length, stride] = [0, 1, 2, 3, 4, 5, 6];
  const [row, end, gap, pushes] = [7, 8, 9, 10];
  const forward = [from, slopes, into, weights];
  return body(
    [
      [3, I32],
      [1, V128],
    ],
    [
      ...set(pushes, [...get(push), 0xfd, 0x13]),
      ...set(gap, [...get(stride), ...get(length), 0x6b]),
      ...counted(row, number(3), 1, [
        ...set(end, plus(get(from), get(length))),
        ...repeated([
          ...store(get(slopes), added(load(get(slopes)), multiplied(get(pushes), load(get(from))))),
          ...store(get(into), added(load(get(into)), multiplied(get(pushes), load(get(weights))))),
          ...forward.flatMap((one) => set(one, plus(get(one), number(16)))),
          ...less(get(from), get(end)),
        ]),
        ...set(from, plus(get(from), get(gap))),
        ...set(into, plus(get(into), get(gap))),
      ]),
    ],
  );
}

// The names of instructions, as the WebAssembly specification (2.0, chapter 5) numbers them.

const get = (local: number) => [0x20, ...whole(local)];
const set = (local: number, value: number[]) => [...value, 0x21, ...whole(local)];
const number = (value: number) => [0x41, ...signed(value)];
const plus = (one: number[], other: number[]) => [...one, ...other, 0x6a];
const times = (one: number[], other: number[]) => [...one, ...other, 0x6c];
const less = (one: number[], other: number[]) => [...one, ...other, 0x49];
const load = (at: number[], off = 0) => [...at, 0xfd, 0x00, 2, ...whole(off)];
const splatFrom = (at: number[]) => [...at, 0xfd, 0x09, 2, 0];
const store = (at: number[], value: number[], off = 0) => [
  ...at,
  ...value,
  0xfd,
  0x0b,
  2,
  ...whole(off),
];
const added = (one: number[], other: number[]) => [...one, ...other, 0xfd, 0xe4, 1];
const multiplied = (one: number[], other: number[]) => [...one, ...other, 0xfd, 0xe6, 1];

/** Again and again as long as what is done last leaves a 1. */
const repeated = (inside: number[]) => [0x03, 0x40, ...inside, 0x0d, 0, 0x0b];

const counted = (local: number, below: number[], step: number, inside: number[]) => [
  ...set(local, number(0)),
  ...repeated([
    ...inside,
    ...set(local, plus(get(local), number(step))),
    ...less(get(local), below),
  ]),
];

function body(locals: ReadonlyArray<readonly [number, number]>, code: number[]): number[] {
  const all = [...listed(locals.map(([count, type]) => [...whole(count), type])), ...code, 0x0b];
  return [...whole(all.length), ...all];
}

const signature = (taken: number[]) => [0x60, ...whole(taken.length), ...taken, 0];
const listed = (parts: number[][]) => [...whole(parts.length), ...parts.flat()];
const section = (id: number, bytes: number[]) => [id, ...whole(bytes.length), ...bytes];
const named = (name: string, kind: number, index: number) => [
  ...whole(name.length),
  ...Buffer.from(name),
  kind,
  index,
];

/** Numbers in groups of seven bits, lowest first. */
function whole(value: number): number[] {
  return value < 128 ? [value] : [(value & 127) | 128, ...whole(value >>> 7)];
}

function signed(value: number): number[] {
  const isLast = value >= -64 && value < 64;
  return isLast ? [value & 127] : [(value & 127) | 128, ...signed(value >> 7)];
}
