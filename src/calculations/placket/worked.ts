import { needed } from '../../calculation/needed.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { type Placket, placket } from '../../sewing/bands/placket.ts';
import { type Zip, zipFor } from '../../sewing/bands/zip.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome, refused } from '../../sewing/problem.ts';
import { passOver } from '../../sewing/wearer/pass-over.ts';
import type { OPEN_FIELDS, PlacketAsked, STRIP_FIELDS, ZIP_FIELDS } from './fields.ts';

type Opens = Pick<PlacketAsked, (typeof OPEN_FIELDS)[number]>;

/** A placket as it was worked out: by strips, or with a zip. */
export interface Worked {
  asked: PlacketAsked;
  open: ExactLength;
  strips?: Placket;
  zip?: Zip;
}

/** How long it opens: as given, or as little as passes. */
export function openOf({ by, body, edge, ease = ZERO, open }: Opens): Outcome<ExactLength> {
  if (by === 'given') {
    const there = needed({ open }).open;
    return answerUnless(mustBePositive('open', there), () => ({ ok: true, value: there }));
  }
  const pass = passOver({ ...needed({ body, edge }), ease });
  if (!pass.ok) return pass;
  const { least, needs } = pass.value;
  if (least > 0) return { ok: true, value: least };
  return refused({ kind: 'not-under', field: 'edge', under: needs, given: needed({ edge }).edge });
}

/** The strips for an opening as planned, or of the length it was cut. */
export function stripsOf(
  fields: Pick<PlacketAsked, (typeof STRIP_FIELDS)[number]>,
  made?: ExactLength,
): Outcome<Placket> {
  const open = openOf(fields);
  if (!open.ok) return open;
  const { width, seam, extra } = fields;
  const way = fields.way === 'strips' ? 'strips' : 'lap';
  return placket({ way, open: made ?? open.value, ...needed({ width, seam, extra }) });
}

/** The zip for an opening as planned, or of the length it was left open. */
export function zipOf(
  fields: Pick<PlacketAsked, (typeof ZIP_FIELDS)[number]>,
  made?: ExactLength,
): Outcome<Zip> {
  const open = openOf(fields);
  return open.ok ? zipFor(made ?? open.value, fields.zip) : open;
}

/** All that is asked of a placket, or every reason why not. */
export function placketOf(asked: PlacketAsked): Outcome<Worked> {
  const open = openOf(asked);
  if (!open.ok) return open;
  if (asked.way !== 'zip') {
    const strips = stripsOf(asked);
    return strips.ok
      ? { ok: true, value: { asked, open: open.value, strips: strips.value } }
      : strips;
  }
  const { allow, row } = needed({ allow: asked.allow, row: asked.row });
  return answerUnless([...mustBePositive('allow', allow), ...mustBePositive('row', row)], () => {
    if (row >= allow) return refused({ kind: 'not-under', field: 'row', under: allow, given: row });
    const zip = zipOf(asked);
    return zip.ok ? { ok: true, value: { asked, open: open.value, zip: zip.value } } : zip;
  });
}

/** Of a placket at a dress's side: what lies above the waist. */
export function aboveWaist(open: ExactLength, above: number, of: number): ExactLength {
  return exactLength((open * above) / of);
}
