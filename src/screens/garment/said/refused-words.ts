import {
  namelessWords,
  notThereWords,
  refusedWords as words,
} from '#words/garment/garment-trouble-words.ts';
import type { Slot } from '../../../garment/actions/slots.ts';
import type { Refused } from '../../../garment/actions/state.ts';
import { readHome } from '../../../garment/record/home.ts';
import {
  LONGEST_NOTE,
  MOST_FACTS,
  MOST_LINKS,
  MOST_PHOTOS,
  MOST_ROW,
  MOST_WORKS,
} from '../../../garment/record/limits.ts';
import { MOST_PIECE_CORNERS } from '../../../garment/record/piece-said.ts';
import { fieldName, type Named, numberName, quantityName, workName } from './names.ts';
import { pathWords } from './path-words.ts';
import { type Telling, troubleWords } from './told-words.ts';

const MOST_NAMED = 4;

/** Why something was not done: what is in its way, where, and what to do instead. */
export function refusedSaid(telling: Telling, refused: Refused): string {
  switch (refused.why) {
    case 'limit':
      return limitWords(refused.limit);
    case 'circle':
      return words.circle(pathWords(telling, refused.path));
    case 'waits':
      return words.waits(troubleWords(telling, refused.home, refused.trouble));
    case 'stale':
    case 'undecided':
    case 'all made':
    case 'id taken':
    case 'a sum is not measured':
    case 'no tape':
    case 'begun':
    case 'made before':
      return words[refused.why];
    case 'not there':
      return notThereWords[refused.what];
    case 'changed since':
      return words.changedSince(slotName(telling, refused.slot));
    case 'made again':
      return words.madeAgain(numberName(telling, refused.home));
    case 'made to it':
      return words.madeTo([...new Set(refused.homes)].map((home) => numberName(telling, home)));
    case 'long note':
      return words.longNote(LONGEST_NOTE);
    case 'many photos':
      return words.manyPhotos(MOST_PHOTOS);
    case 'taken':
      return takenWords(telling, refused.by);
    case 'has facts':
      return words.hasFacts(thingName(telling, refused.id));
    default:
      return unworded(refused);
  }
}

/** Who takes what was to be taken off: the first few by name. */
function takenWords(named: Named, by: readonly Slot[]): string {
  const names = [...new Set(by.map((slot) => slotName(named, slot)))];
  return words.taken(names.slice(0, MOST_NAMED), names.length - MOST_NAMED);
}

function limitWords(limit: Extract<Refused, { why: 'limit' }>['limit']): string {
  switch (limit) {
    case 'works':
      return words.works(MOST_WORKS);
    case 'facts':
      return words.facts(MOST_FACTS);
    case 'links':
      return words.links(MOST_LINKS);
    case 'row':
      return words.row(MOST_ROW);
    case 'outline':
      return words.outline(MOST_PIECE_CORNERS);
    default:
      return words[limit];
  }
}

/** A work or a quantity by its name. */
function thingName(named: Named, id: string): string {
  return named.answer.works.has(id) ? workName(named, id) : quantityName(named, id);
}

/** What stands at a place of a record: a field by its label, a fact by what it is of. */
export function slotName(named: Named, [map, id = '', part, ...rest]: Slot): string {
  if (map === 'facts') {
    const home = [...named.answer.sound.facts].find(([, all]) => all.some((one) => one.id === id));
    return home ? numberName(named, home[0]) : namelessWords.gone;
  }
  if (map === 'materials' || map === 'lays') return namelessWords.material;
  if (map === 'begun' || map === 'decisions' || map === 'passed' || map === 'notes') {
    const { id: work, side, key } = readHome(id);
    return key === '' ? workName(named, work, side) : numberName(named, id);
  }
  if (map !== 'works') return quantityName(named, id);
  const [side, field] = part === 'own' ? rest : ['', rest[0]];
  const isField = (part === 'fields' || part === 'own') && field !== undefined;
  return isField ? fieldName(named, id, side ?? '', field) : workName(named, id, side);
}

/** Fails to compile while a reason has no words. */
function unworded(refused: never): never {
  throw new Error(`no words for ${JSON.stringify(refused)}`);
}
