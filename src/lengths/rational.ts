/** An exact number: `over`/`under`, with `under` above zero. Not reduced. */
export interface Rational {
  readonly over: bigint;
  readonly under: bigint;
}

export const NOUGHT: Rational = { over: 0n, under: 1n };

export function plus(a: Rational, b: Rational): Rational {
  return { over: a.over * b.under + b.over * a.under, under: a.under * b.under };
}

export function times(a: Rational, b: Rational): Rational {
  return { over: a.over * b.over, under: a.under * b.under };
}

/** One over `a`, which must not be zero. */
export function inverse(a: Rational): Rational {
  return a.over < 0n ? { over: -a.under, under: -a.over } : { over: a.under, under: a.over };
}

export function negative(a: Rational): Rational {
  return { over: -a.over, under: a.under };
}

/** The nearest whole number; midway goes to the even one. */
export function nearest({ over, under }: Rational): bigint {
  const size = over < 0n ? -over : over;
  const below = size / under;
  const twice = 2n * (size % under);
  const up = twice > under || (twice === under && below % 2n === 1n);
  const whole = below + (up ? 1n : 0n);
  return over < 0n ? -whole : whole;
}
