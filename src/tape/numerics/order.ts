/**
 * The value that stands at `place`, counted from 0, once all are in order, those that are no numbers last;
 * NaN beyond the last number. What is not sought is left unsorted: a fraction of the work. Changes the array.
 */
export function nth(values: Float64Array | Float32Array, place: number): number {
  let [low, high] = [0, numbersFirst(values) - 1];
  if (!(place <= high)) return Number.NaN;
  while (low < high) {
    const pivot = values[(low + high) >> 1] as number;
    let [left, right] = [low, high];
    while (left <= right) {
      while ((values[left] as number) < pivot) left++;
      while ((values[right] as number) > pivot) right--;
      if (left <= right) swap(values, left++, right--);
    }
    if (place <= right) high = right;
    else if (place >= left) low = left;
    else break;
  }
  return values[place] as number;
}

/** The median; of an even number of values the upper of the middle two; NaN of none. */
export function median(values: ArrayLike<number>): number {
  return nth(new Float64Array(values), values.length >> 1);
}

/** Puts what is not a number last; gives how many numbers there are. */
function numbersFirst(values: Float64Array | Float32Array): number {
  let end = values.length;
  for (let i = 0; i < end; i++) {
    while (i < end && Number.isNaN(values[i])) swap(values, i, --end);
  }
  return end;
}

function swap(values: Float64Array | Float32Array, one: number, other: number): void {
  const kept = values[one] as number;
  values[one] = values[other] as number;
  values[other] = kept;
}
