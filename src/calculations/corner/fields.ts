import { cornerWords as words } from '#words/calculations/corner-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import { choice, length, lengthOrNone, number } from '../../calculation/field-spec.ts';
import { schema } from '../../calculation/schema.ts';

/** What is asked of a mitred corner. */
export const cornerFields = schema(words.labels, {
  depth: length({ start: { cm: '4', mm: '40', in: '1 1/2' }, usual: 'hemDepth' }),
  side: length({ start: { cm: '1.5', mm: '15', in: '5/8' }, usual: 'hemDepth' }),
  angle: number({ start: '90', usual: 'cornerAngle' }),
  turned: choice(words.turned),
  edgeStitch: length({ start: { cm: '0.2', mm: '2', in: '1/8' }, usual: 'edgeStitch' }),
  thickness: lengthOrNone(turnedWords.notGiven),
});
