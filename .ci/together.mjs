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
 *   folders; a folder in a folder may be another group's. `shared`: what the files `by` of two or
 *   more folders import, the folder being its first group, comes with the group `with`.
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
    for (const name of Object.keys(groups)) {
      take(
        name,
        [...graph.keys()].filter((id) => groupOf(id) === name),
      );
      if (name !== shared.with) continue;
      for (const id of sharedIn(graph, shared.by)) if (!parts.has(id)) parts.set(id, name);
    }
    return parts;
  }

  /** @param {string} id */
  function groupOf(id) {
    let [group, length] = ['', 0];
    for (const [name, paths] of Object.entries(groups)) {
      for (const path of paths.map((one) => `${root}/${one}`)) {
        const inside = id === path || (path.endsWith('/') && id.startsWith(path));
        if (inside && path.length > length) [group, length] = [name, path.length];
      }
    }
    return group;
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
 * What the files of two or more folders import: `by` names the folder as its first group.
 * @param {ReadonlyMap<string, string[]>} graph
 * @param {RegExp} by
 */
function sharedIn(graph, by) {
  /** @type {Map<string, Set<string>>} */
  const folders = new Map();
  for (const root of graph.keys()) {
    const folder = by.exec(root)?.[1];
    if (!folder) continue;
    for (const id of closure(graph, [root])) {
      const known = folders.get(id);
      if (known) known.add(folder);
      else folders.set(id, new Set([folder]));
    }
  }
  return [...folders].filter(([, of]) => of.size > 1).map(([id]) => id);
}
