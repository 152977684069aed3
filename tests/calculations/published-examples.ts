import type { CalculationId } from '#words/calculations/calculation-names.ts';
import { OUTPUTS } from '../../src/calculations/list.ts';
import { type ExactLength, toInches, toMm } from '../../src/lengths/length.ts';
import { benchOf } from '../controls/helpers.ts';
import { workOutputs } from './work-outputs.ts';

/** What a source prints, typed into the fields of a calculation, and read off what that gives. */
export interface PublishedExample {
  /** Of the check values, D where the number is arithmetic on its rule; its source stands at the test of the arithmetic. */
  row: string;
  of: CalculationId;
  unit: 'cm' | 'in';
  /** What is asked, as its source has it. */
  says: string;
  /** What is typed; the rest as the page begins. */
  set: Readonly<Record<string, string>>;
  /** Which number of what it gives. */
  key: string;
  /** As it is printed: to so many places ours has to be that. */
  printed: string;
  as: keyof typeof IN | '';
  /** Ours where that is another number, and why. */
  ours: string;
  why: string;
}

const chain = 'stitch=chain&thickness=0.075&stitchLong=1/8&seams=42.12&end=';

/** The examples that sources work out. Seams and joins that they leave out are left out here. */
const EXAMPLES = `
4.1 | thread in | chainstitch by formula, 1.17 yd | ${chain}&waste=0 | thread | 6.08 yd
4.1 | thread in | the same with 15 % | ${chain}&waste=15 | thread | 7.00 yd
4.3 | thread in | by its ratio | ${chain}&by=guide&waste=0 | thread | 5.85 yd
4.3 | thread in | the same with 15 % | ${chain}&by=guide&waste=15 | thread | 6.73 yd
4.4 | thread in | by a seam unpicked | ${chain}&by=sample&waste=0 | thread | 6.63 yd
4.4 | thread in | the same with 15 % | ${chain}&by=sample&waste=15 | thread | 7.62 yd
4.8 | thread in | single chainstitch, 9 to the inch | stitch=single&thickness=0.005&stitchLong=1/9 | ratio | 3.09
4.9 | thread in | lockstitch, 10 to the inch | stitch=lock&thickness=0.01&stitchLong=1/10 | ratio | 2.2
7.12 | bias in | a square for 250 in of 2 | from=round&width=2&need=250&seam=0 | cloth | 22.36 in | 22.63 | its square by area has a round less than it takes
7.15 | shrinkage in | 36 × 42 to 35 × 41, of the area in % | | area | 5.09
7.19 | repeat cm | 4 panels of 110 at a repeat of 32 | | cloth | 472 cm | 494 | one repeat more serves one match, not three
11.2 | pleats cm | 92 cm in pleats of 5, 4 deep | seam=0 | count | 18
11.2 | pleats cm | the same: each | seam=0 | width | 5.1 cm
11.2 | pleats cm | the same: the strip | seam=0 | strip | 236 cm
11.4 | pleats cm | normal pleats over 50, seam 2 | finished=50&width=2.5&depth=2.5 | strip | 152 cm
11.5 | pleats cm | a box pleat 12 deep over 60 | kind=box&by=count&count=1&finished=60&depth=12&seam=0 | strip | 108 cm
11.6 | pleats cm | an inverted pleat 6.5 deep over 66 | kind=inverted&by=count&count=1&finished=66&depth=6.5&seam=0 | strip | 92 cm
12.2 | tucks cm | 39 cm, gaps 1.2, edges 1.5 | by=spacing&finished=39&spacing=1.2&first=1.5 | count | 31
12.3 | tucks cm | 28 cm, gap 1.5, tucks of 2 mm, edges 2 | fit=no-wider | count | 16
12.3 | tucks cm | the same: cut | fit=no-wider | cut | 34.4 cm
12.3 | tucks cm | the same: apart | fit=no-wider | spacing | 1.6 cm
13.3 | gathers cm | 1.80 m at 3 times | ends=0 | strip | 5.40 m
13.3 | gathers cm | the same of cloth 1.10 wide, 15 deep | seam=0&ends=0 | cloth | 75 cm
13.5 | gathers cm | 1.60 m that comes in to 2/5 | by=part&edge=160&ends=0 | strip | 4.00 m
13.7 D | tiers in | three tiers at 1 1/2 | | full | 3.375
13.8 | tiers in | depths of four | depths=6 1/4; 6 3/4; 7 1/4; 8 3/4 | long | 29 in
13.10 | gathers in | 15 in, 2.5 old inches in a new one | by=sample&edge=15&sampleFlat=2.5&sampleGathered=1&ends=0 | strip | 37.5 in
14.2 D | elastic cm | a casing for 25 mm, first turn 5 mm | ease=0.2&edge= | allowance | 3.2 cm
14.9 | elastic in | left open for 1 1/2 in | width=1 1/2 | opening | 1.625 in
15.1 | darts in | hip 37, waist 27 | larger=37&smaller=27 | intake | 10 in
15.2 | darts in | hip 37, waist 29: a side edge | | side-edge | 1 in
15.2 | darts in | the same: a front dart | | front-dart | 0.625 in
15.2 | darts in | the same: a back dart | | back-dart | 1.250 in | 1.375 | printed shares leave 1/4 in of the 8 in nowhere
15.11 D | curve cm | 2.6 aside over 20 | kind=slant&high=20&aside=2.6 | slant | 20.17 cm
16.2 | circle cm | two quarter panels for an edge of 30 | edge=30&part=half&panels=2 | radius | 9.6 cm | 9.5 | it takes π as 3.1: the edge is half a per cent too long
17.3 | bias cm | 5 m of 2.5 cm from 86, shortest 10 | seam=0 | cloth | 15.12 cm | 15.72 | by area the last strip is not whole; with joins of 6 mm it is 16.8
17.5 | bias cm | one strip of 3 cm from a square of 65 | from=single&want=have&width=3&long=65 | long | 88 cm | 89 | it takes √2 as 1.4
17.11 | binding in | a band of 2 in | finish=band&width=2 | strip | 4.5 in
3.8 | binding in | a bound seam of 5/8 in | finish=seam&seam=5/8 | strip | 0.875 in
18.2 | placket in | a 24 in zip in 23 in | way=zip&by=given&open=23&zip=24 | left | 1 in
18.4 | placket in | a strip round an opening | by=given&open=4&width=3/4&seam=1/4 | wide | 2 in
18.6 | pocket in | the facing of a slash of 5 in | kind=slash&width=5 | facing-long | 6 in
18.10 | pocket in | 12.5 in to the side, a pocket of 6 | front=12.5&width=6 | near | 4.33 in
20.50 D | placket cm | a neckline of 40, a head of 57.4, 2 to spare | body=57.4&edge=40&ease=2 | slit | 9.7 cm
21.12 D | shrinkage cm | 60 cm at 3 % | | cut-along | 61.86 cm
21.12 D | shrinkage cm | 40 cm at 1 % | | cut-across | 40.40 cm
21.13 D | curve cm | 28 mm of bow in 140 cm, in % | kind=grain | bowed | 2
5.1 | grouped in | 8 buttons over 15 in | opening=15&groups=8&each=1&top=&bottom= | between | 2.14 in
6.14 D | outline cm | 12 × 18 cm, margin and pitch 5 mm | | count | 112
23.19 D | cord cm | a channel of 80, 14 free at each end | | cut | 108 cm
`;

export const PUBLISHED: readonly PublishedExample[] = EXAMPLES.trim().split('\n').map(read);

function read(line: string): PublishedExample {
  const [row = '', of = '', says = '', set = '', key = '', printed = '', ours = '', why = ''] = line
    .split('|')
    .map((part) => part.trim());
  const [id, unit] = of.split(' ');
  const [number = '', as = ''] = printed.split(' ');
  return {
    ...{ row, says, key, ours, why, printed: number },
    ...{ of: id as CalculationId, unit: unit as 'cm' | 'in', as: as as PublishedExample['as'] },
    set: Object.fromEntries(new URLSearchParams(set)),
  };
}

const IN = {
  cm: (length: ExactLength) => toMm(length) / 10,
  m: (length: ExactLength) => toMm(length) / 1000,
  in: toInches,
  yd: (length: ExactLength) => toInches(length) / 36,
};

/** What ours gives, to as many places as are printed. */
export async function oursOf(example: PublishedExample): Promise<string> {
  const { of, unit, set, key, printed, as } = example;
  const gives = await OUTPUTS[of]?.();
  if (!gives) throw new Error(`${of} gives nothing`);
  const bench = benchOf({ unit });
  const came = workOutputs(gives, { ...gives.fields.asked.start(bench), ...set }, bench).get(key);
  if (came?.state !== 'here') throw new Error(`${of}, ${key}: ${JSON.stringify(came)}`);
  const places = printed.split('.')[1]?.length ?? 0;
  const number = as === '' ? Number(came.value) : IN[as](came.value as ExactLength);
  return number.toFixed(places);
}
