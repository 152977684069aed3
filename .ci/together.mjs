/** @typedef {(id: string) => { importedIds: string[], dynamicallyImportedIds: string[] } | null} Ask */

/**
 * What a phone fetches as one file, worked out from who imports whom rather than from names:
 * first all that the page itself imports; then each group, with all that its files import and
 * no earlier one has. What is asked for only when it is wanted stays a file of its own.
 *
 * @param {{
 *   root: string,
 *   page: string,
 *   groups: Readonly<Record<string, readonly string[]>>,
 *   shared: { by: RegExp, with: string },
 * }} wanted
 *   `page`: the file the page starts with. `groups`: by name, files or (ending with a slash)
 *   folders. `shared`: what two or more of the files `by` import comes with the group `with`.
 *   All paths from the root.
 */
export function together({ root, page, groups, shared }) {
  /** @type {Map<string, string> | undefined} */
  let parts;
  // In this order: a group takes along what its files import, unless one before it has it.
  return ['base', ...Object.keys(groups)].map((part) => ({
    debugName: part,
    name: (/** @type {string} */ id, /** @type {{ getModuleInfo: Ask }} */ graph) => {
      parts ??= partsOf((one) => graph.getModuleInfo(one));
      return parts.get(id) === part ? part : null;
    },
  }));

  /** @param {Ask} getModuleInfo */
  function partsOf(getModuleInfo) {
    const here = (/** @type {string} */ path) => `${root}/${path}`;
    const graph = graphFrom(here(page), getModuleInfo);
    /** @type {Map<string, string>} */
    const parts = new Map();
    const take = (/** @type {string} */ name, /** @type {string[]} */ roots) => {
      for (const id of closure(graph, roots)) if (!parts.has(id)) parts.set(id, name);
    };
    take('base', [here(page)]);
    for (const [name, files] of Object.entries(groups)) {
      const roots = files.map(here);
      const isRoot = (/** @type {string} */ id) =>
        roots.some((one) => id === one || (one.endsWith('/') && id.startsWith(one)));
      take(name, [...graph.keys()].filter(isRoot));
      if (name !== shared.with) continue;
      for (const id of sharedIn(graph, shared.by)) if (!parts.has(id)) parts.set(id, name);
    }
    return parts;
  }
}

/**
 * Every file there is, by what it imports at once.
 * @param {string} first
 * @param {Ask} getModuleInfo
 */
function graphFrom(first, getModuleInfo) {
  /** @type {Map<string, string[]>} */
  const graph = new Map();
  const waiting = [first];
  for (const id of waiting) {
    if (graph.has(id)) continue;
    const info = getModuleInfo(id);
    if (!info) continue;
    graph.set(id, info.importedIds);
    waiting.push(...info.importedIds, ...info.dynamicallyImportedIds);
  }
  if (graph.size === 0) throw new Error(`${first} is no file of this build`);
  return graph;
}

/**
 * @param {ReadonlyMap<string, string[]>} graph
 * @param {readonly string[]} roots
 */
function closure(graph, roots) {
  const found = new Set(roots);
  for (const id of found) for (const next of graph.get(id) ?? []) found.add(next);
  return found;
}

/**
 * @param {ReadonlyMap<string, string[]>} graph
 * @param {RegExp} by
 */
function sharedIn(graph, by) {
  /** @type {Map<string, number>} */
  const times = new Map();
  for (const root of [...graph.keys()].filter((id) => by.test(id))) {
    for (const id of closure(graph, [root])) times.set(id, (times.get(id) ?? 0) + 1);
  }
  return [...times].filter(([, count]) => count > 1).map(([id]) => id);
}
