import { namelessWords, placeInGarment } from '#words/garment/garment-trouble-words.ts';
import { fieldsEver } from '../../../calculation/fields-ever.ts';
import { readHome } from '../../../garment/record/home.ts';
import { plainText } from '../../../garment/record/plain-text.ts';
import type { Link } from '../../../garment/record/record.ts';
import type { SeenWork } from '../../../garment/work-out/seen-work.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';

/** Whose names are said, and the work that is open: its own name is then left out. */
export interface Named {
  answer: Answer;
  here?: string | undefined;
}

/** What a key or a home stands for: "Back hem, left · Allowance", or the name of a quantity. */
export function numberName({ answer, here }: Named, key: string): string {
  const node = answer.nodes.get(key);
  const {
    id,
    side,
    key: own,
  } = node ? { id: node.id, side: node.side, key: node.output?.key ?? '' } : readHome(key);
  if (answer.sound.quantities.has(id)) return quantityName({ answer }, id);
  const seen = answer.works.get(id);
  if (!seen) return namelessWords.gone;
  const output = outputName(seen, own);
  return id === here && side === '' ? output : partOf(seen, side, output);
}

/** What a number of a work is called within it: "Allowance". */
export function ownName({ answer }: Named, home: string): string {
  const { id, key } = readHome(home);
  const seen = answer.works.get(id);
  return seen ? outputName(seen, key) : namelessWords.gone;
}

export function quantityName({ answer }: Named, id: string): string {
  const name = answer.sound.quantities.get(id)?.name.trim();
  return name === '' ? namelessWords.quantity : (name ?? namelessWords.gone);
}

export function workName({ answer }: Named, id: string, side = ''): string {
  const seen = answer.works.get(id);
  return seen ? withSide(seen, side) : namelessWords.gone;
}

/** A field of a work: "Back hem · Depth"; of the work that is open "Depth"; of a quantity its name. */
export function fieldName({ answer, here }: Named, id: string, side: string, key: string): string {
  if (answer.sound.quantities.has(id)) return quantityName({ answer }, id);
  const seen = answer.works.get(id);
  if (!seen) return namelessWords.gone;
  const label = fieldLabel(seen, side, key);
  return id === here && side === '' ? label : partOf(seen, side, label);
}

/** What a link takes; without a name where that is gone. */
export function linkName(named: Named, link: Link): string {
  if ('quantity' in link) return quantityName(named, link.quantity);
  const seen = named.answer.works.get(link.work);
  return seen ? partOf(seen, link.of ?? '', outputName(seen, link.output)) : namelessWords.gone;
}

/** The label of a field as it stands beside its box, also of one that isn't asked for just now. */
function fieldLabel({ gives, sides, outputs }: SeenWork, side: string, key: string): string {
  if (typeof gives !== 'object') return namelessWords.field;
  const draft = (sides.find((one) => one.side === side) ?? sides[0])?.draft ?? {};
  const { asked } = gives.fields;
  const field =
    asked.fields(draft).find((one) => one.key === key) ??
    fieldsEver(asked, draft).find((one) => one.key === key);
  // A number that takes another of its own work waits for that one.
  const output = outputs?.outputs.find((one) => one.key === key);
  return field?.label ?? output?.name ?? namelessWords.field;
}

function outputName({ gives }: SeenWork, key: string): string {
  const outputs = typeof gives === 'object' ? gives.outputs : [];
  return outputs.find((one) => one.key === key)?.name ?? namelessWords.output;
}

function partOf(seen: SeenWork, side: string, part: string): string {
  return placeInGarment.part(withSide(seen, side), part);
}

/** A side is called as it is kept, which may be anyone's. */
export function sideName(side: string): string {
  return plainText(side);
}

function withSide(seen: SeenWork, side: string): string {
  return placeInGarment.work(nameOf(seen), sideName(side));
}

function nameOf({ work }: SeenWork): string {
  return work.name.trim() === '' ? namelessWords.work : work.name.trim();
}

/** A sentence that may begin with a name, or with what stands for one. */
export function asSentence(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1);
}
