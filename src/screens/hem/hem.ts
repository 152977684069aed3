import type { Bench } from '../../controls/bench.ts';
import type { Calculation, Draft } from '../../controls/calculation.ts';
import { type DraftReader, readDraft } from '../../controls/draft.ts';
import { numberOf } from '../../controls/draft-numbers.ts';
import { refusedFor } from '../../controls/problem-faults.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import { type HemInput, hem as workHem } from '../../sewing/hem.ts';
import { type CurveInput, curvedHem } from '../../sewing/hem-curve.ts';
import { mitre } from '../../sewing/mitre.ts';
import type { Outcome, Problem } from '../../sewing/problem.ts';
import { EASE_BY_CLOTH } from '../../sewing/sources/hems.ts';
import { type Taper, type TaperInput, trueTaper } from '../../sewing/taper.ts';
import { hemWords as words } from '../../words/hem-words.ts';
import { hemAnswer, type Parts } from './answer.ts';
import { chosen, hemFields } from './fields.ts';

/** A hem, its lines, its curve, its corner. */
export const hem: Calculation = {
  id: 'hem',
  title: words.title,
  start: startingDraft,
  fields: hemFields,
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const input = hemInput(read, draft);
    const curve = input && readCurve(read, draft);
    const corner = readCorner(read, draft);
    const widths = readWidths(read, draft);
    if (!input || read.faults.length > 0) return { ok: false, faults: read.faults };
    const parts = {
      hem: workHem(input),
      curve: curve && curvedHem(input.depth, curve.input, curve.ease),
      corner: corner && mitre(input.depth, corner.side, corner.angle),
      // Without a depth there is no slope; that there is none is the hem's own problem.
      taper: input.depth > 0 && widths ? taperOf(input, widths) : undefined,
    };
    const problems = Object.values(parts).flatMap((part) =>
      part && !part.ok ? part.problems : [],
    );
    if (problems.length > 0) return refusedFor(problems);
    const solved = Object.fromEntries(
      Object.entries(parts).flatMap(([key, part]) => (part?.ok ? [[key, part.value]] : [])),
    ) as unknown as Parts;
    return {
      ok: true,
      answer: hemAnswer(input, { ...solved, ease: curve?.ease ?? 0 }, draft, bench),
    };
  },
};

function startingDraft(bench: Bench): Draft {
  const inInches = bench.unit === 'in';
  const scale = (cm: string, mm: string, inches: string) =>
    inInches ? inches : bench.unit === 'mm' ? mm : cm;
  return {
    depth: scale('2', '20', '1'),
    style: 'unequal',
    turn: scale('0.7', '7', '1/4'),
    edgeStitch: scale('0.2', '2', '1/8'),
    thickness: '',
    finished: '',
    shape: 'straight',
    chord: scale('40', '400', '16'),
    rise: scale('5', '50', '2'),
    round: scale('60', '600', '24'),
    above: scale('57', '570', '23'),
    cloth: 'medium',
    ease: '6',
    corner: 'none',
    side: scale('1.5', '15', '5/8'),
    angle: '90',
    taper: 'none',
    atHem: scale('20', '200', '8'),
    acrossAbove: scale('21', '210', '8 1/2'),
  };
}

function hemInput(read: DraftReader, draft: Draft): HemInput | undefined {
  const style = chosen(draft, 'style');
  const depth = read.length('depth');
  const edgeStitch = read.length('edgeStitch');
  const thickness = read.maybeLength('thickness') ?? ZERO;
  const finished = read.maybeLength('finished');
  const first = style === 'unequal' || style === 'narrow' ? read.length('turn') : ZERO;
  if (depth === undefined || edgeStitch === undefined || first === undefined) return undefined;
  return { depth, turn: style === 'double' ? depth : first, thickness, edgeStitch, finished };
}

function readCurve(
  read: DraftReader,
  draft: Draft,
): { input: CurveInput; ease: number } | undefined {
  const shape = chosen(draft, 'shape');
  if (shape === 'straight') return undefined;
  const byReadings = shape === 'readings';
  const one = read.length(byReadings ? 'round' : 'chord');
  const other = read.length(byReadings ? 'above' : 'rise');
  const ease = shape === 'inward' ? 0 : easeOf(read, draft);
  if (one === undefined || other === undefined || ease === undefined) return undefined;
  const input: CurveInput = byReadings
    ? { by: 'readings', round: one, above: other }
    : { by: 'rise', chord: one, rise: other };
  return { input, ease };
}

/** The part of its length the cloth eases in. */
function easeOf(read: DraftReader, draft: Draft): number | undefined {
  const cloth = chosen(draft, 'cloth');
  if (cloth !== 'own') return EASE_BY_CLOTH[cloth];
  const percent = numberOf(read, 'ease');
  return percent === undefined ? undefined : percent / 100;
}

function readCorner(read: DraftReader, draft: Draft): { side: Length; angle: number } | undefined {
  if (chosen(draft, 'corner') === 'none') return undefined;
  const side = read.length('side');
  const angle = numberOf(read, 'angle');
  return side === undefined || angle === undefined ? undefined : { side, angle };
}

type Widths = Pick<TaperInput, 'atHem' | 'above'>;

function readWidths(read: DraftReader, draft: Draft): Widths | undefined {
  if (chosen(draft, 'taper') === 'none') return undefined;
  const atHem = read.length('atHem');
  const above = read.length('acrossAbove');
  return atHem === undefined || above === undefined ? undefined : { atHem, above };
}

function taperOf({ depth, turn }: HemInput, widths: Widths): Outcome<Taper> {
  return namedAbove(trueTaper({ ...widths, depth, turn }));
}

/** The taper's upper width has a field of its own here: `above` is the curve's. */
function namedAbove<Value>(outcome: Outcome<Value>): Outcome<Value> {
  if (outcome.ok) return outcome;
  const named = outcome.problems.map(
    (problem): Problem =>
      problem.field === 'above' ? { ...problem, field: 'acrossAbove' } : problem,
  );
  return { ok: false, problems: named as unknown as typeof outcome.problems };
}
