/** Where a fact, a begun row or a decision belongs: to a quantity, or to one step of one side of a work. */
export interface Home {
  id: string;
  /** Empty where the work has no sides, and of a quantity. */
  side: string;
  /** The key of the output that the step makes; empty of a quantity. */
  key: string;
}

const BETWEEN = '|';

/** A home as a key of a record. */
export function homeOf(id: string, side = '', key = ''): string {
  return [id, side, key].join(BETWEEN);
}

export function readHome(home: string): Home {
  const [id = '', side = '', key = ''] = home.split(BETWEEN);
  return { id, side, key };
}

/** Whether a home is of a work or a quantity: of thousands few are, and the others need not be read. */
export function isHomeOf(home: string, id: string): boolean {
  return home.startsWith(id + BETWEEN);
}

/** Homes by the work or the quantity they belong to. */
export function byId(homes: Iterable<string>): Map<string, string[]> {
  const all = new Map<string, string[]>();
  for (const home of homes) {
    const { id } = readHome(home);
    const there = all.get(id);
    if (there) there.push(home);
    else all.set(id, [home]);
  }
  return all;
}

/** Whether this can be an id or a side: it stands in homes. */
export function isId(read: unknown): read is string {
  return typeof read === 'string' && read !== '' && read.length <= 80 && !read.includes(BETWEEN);
}
