import { Unreadable } from './file-problem.ts';

/** A part of an XML text as it begins or ends, by its name without prefix; and where what it holds begins. */
export type XmlEvent =
  | { kind: 'begins'; name: string; attributes: ReadonlyMap<string, string>; from: number }
  | { kind: 'ends'; name: string };

/** Parts within parts that are followed. */
const MOST_DEEP = 100;

const NAME = /[A-Za-z_][^\s=<>/"'&]*/y;
const ATTRIBUTE = /\s+([A-Za-z_:][^\s=<>/"'&]*)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;
const TAG_END = /\s*(\/?)>/y;

/**
 * The parts of an XML text in turn, strictly: what isn't well formed stops the reading. Texts that
 * stand for others are refused, not followed.
 * @throws {Unreadable}
 */
export function* xmlEvents(text: string): Generator<XmlEvent> {
  const open: string[] = [];
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
    const past = text.startsWith(DOCTYPE, at) ? pastKind(text, at) : passedOver(text, at);
    if (past !== undefined) {
      at = past;
      continue;
    }
    const closes = text[at + 1] === '/';
    const name = sticky(NAME, text, at + (closes ? 2 : 1))?.[0];
    if (name === undefined) throw damaged(text, at);
    const tag = closes ? undefined : attributesOf(text, NAME.lastIndex);
    const end = sticky(TAG_END, text, tag?.end ?? NAME.lastIndex);
    if (!end || (closes && (end[1] || open.pop() !== name))) throw damaged(text, at);
    const local = name.slice(name.indexOf(':') + 1);
    at = TAG_END.lastIndex;
    if (tag) yield { kind: 'begins', name: local, attributes: tag.attributes, from: at };
    if (tag && !end[1]) open.push(name);
    if (open.length > MOST_DEEP) throw new Unreadable({ kind: 'too-deep', most: MOST_DEEP });
    if (closes || end[1]) yield { kind: 'ends', name: local };
  }
  if (open.length) throw damaged(text, text.length);
}

/** Where what isn't a part ends: a comment, a text, an instruction. */
function passedOver(text: string, at: number): number | undefined {
  for (const [begins, ends] of [
    ['<!--', '-->'],
    ['<![CDATA[', ']]>'],
    ['<?', '?>'],
  ] as const) {
    if (!text.startsWith(begins, at)) continue;
    const end = text.indexOf(ends, at + begins.length);
    if (end < 0) throw damaged(text, at);
    return end + ends.length;
  }
  return undefined;
}

const DOCTYPE = '<!DOCTYPE';
/** What a document is called, and where more of it is said: that is never fetched. */
const KIND =
  /<!DOCTYPE\s+[^\s<>[\]"']+(?:\s+SYSTEM|\s+PUBLIC\s+(?:"[^"]*"|'[^']*'))?(?:\s*(?:"[^"]*"|'[^']*'))?\s*/y;
/** What is declared without a value of its own, and changes nothing of a drawing. */
const DECLARED = /<!(?:ELEMENT|ATTLIST)\s[^<>"'%&]*>/y;
const KIND_END = /\]\s*>/y;

/**
 * Where the kind of a document ends, with what is declared there (W3C, XML 1.0, 2.8).
 * @throws {Unreadable} where it declares texts that stand for others, or values that aren't written
 */
function pastKind(text: string, from: number): number {
  let at = sticky(KIND, text, from) ? KIND.lastIndex : text.length;
  if (text[at] === '>') return at + 1;
  if (text[at] !== '[') throw damaged(text, from);
  for (at = pastSpace(text, at + 1); at < text.length; at = pastSpace(text, at)) {
    if (sticky(KIND_END, text, at)) return KIND_END.lastIndex;
    const past = passedOver(text, at);
    if (past === undefined && !sticky(DECLARED, text, at)) {
      const declares = text[at] === '%' || text.startsWith('<!', at);
      throw declares ? new Unreadable({ kind: 'hostile' }) : damaged(text, at);
    }
    at = past ?? DECLARED.lastIndex;
  }
  throw damaged(text, from);
}

const SPACE = /\s*/y;
const pastSpace = (text: string, at: number) => (sticky(SPACE, text, at) ? SPACE.lastIndex : at);

function attributesOf(text: string, from: number) {
  const attributes = new Map<string, string>();
  let end = from;
  for (let one = sticky(ATTRIBUTE, text, end); one; one = sticky(ATTRIBUTE, text, end)) {
    if (attributes.has(one[1]!)) throw damaged(text, end);
    attributes.set(one[1]!, plain(one[2] ?? one[3] ?? ''));
    end = ATTRIBUTE.lastIndex;
  }
  return { attributes, end };
}

/** The characters that XML itself has names for (W3C, XML 1.0, 4.6). */
const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};
const REFERENCE = /&(?:#(\d{1,7})|#x([\da-fA-F]{1,6})|(amp|lt|gt|quot|apos));/g;

/** A value with its references to single characters as these. */
function plain(value: string): string {
  return value.replace(REFERENCE, (whole, decimal?: string, hex?: string, name?: string) => {
    if (name) return NAMED[name] ?? whole;
    const code = decimal ? Number(decimal) : Number.parseInt(hex ?? '', 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

/** What a pattern finds at this very place. */
export function sticky(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function damaged(text: string, at: number): Unreadable {
  let line = 1;
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', end + 1))
    line++;
  return new Unreadable({ kind: 'damaged', line });
}
