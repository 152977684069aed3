// Checks every zone of the house in one process, so that what they share is read once. Prints, as
// JSON, by zone: what the compiler has against its own files, and which they are. A file that a
// zone only imports is checked in the zone it belongs to.
import { relative, resolve } from 'node:path';
import ts from 'typescript';

const root = process.cwd();
const zones = process.argv.slice(2);
const registry = ts.createDocumentRegistry();

const opened = zones.map((zone) => ({ zone, ...open(resolve(zone)) }));
const owned = new Set(opened.flatMap(({ own }) => own));
const report = {};
for (const { zone, own, service, faults } of opened) {
  const program = service.getProgram();
  // What no zone has of its own is checked where it is imported.
  const strays = program
    .getSourceFiles()
    .map(({ fileName }) => fileName)
    .filter((name) => isOurs(name) && !owned.has(name));
  const checked = [...own, ...strays];
  for (const name of strays) owned.add(name);
  const all = [
    ...faults,
    ...program.getOptionsDiagnostics(),
    ...program.getGlobalDiagnostics(),
    ...checked.flatMap((name) => {
      const file = program.getSourceFile(name);
      if (!file) return [];
      return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)];
    }),
  ];
  report[zone] = {
    faults: ts.sortAndDeduplicateDiagnostics(all).map(said),
    checked: checked.map((name) => relative(root, name)),
  };
  service.dispose();
}
process.stdout.write(JSON.stringify(report));

function open(config) {
  const host = { ...ts.sys, onUnRecoverableConfigFileDiagnostic: (fault) => faults.push(fault) };
  const faults = [];
  const parsed = ts.getParsedCommandLineOfConfigFile(config, {}, host);
  if (!parsed) return { own: [], faults, service: serviceOf([], {}) };
  return {
    own: parsed.fileNames,
    faults: [...faults, ...parsed.errors],
    service: serviceOf(parsed.fileNames, parsed.options),
  };
}

function serviceOf(names, options) {
  return ts.createLanguageService(
    {
      getCompilationSettings: () => options,
      getScriptFileNames: () => names,
      getScriptVersion: () => '1',
      getScriptSnapshot: (name) => {
        const text = ts.sys.readFile(name);
        return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
      },
      getCurrentDirectory: () => root,
      getDefaultLibFileName: ts.getDefaultLibFilePath,
      fileExists: ts.sys.fileExists,
      readFile: ts.sys.readFile,
      readDirectory: ts.sys.readDirectory,
      directoryExists: ts.sys.directoryExists,
      getDirectories: ts.sys.getDirectories,
      realpath: ts.sys.realpath,
    },
    registry,
  );
}

function isOurs(name) {
  return name.startsWith(root) && !name.includes('/node_modules/');
}

function said(fault) {
  const text = ts.flattenDiagnosticMessageText(fault.messageText, ' ');
  const { file, start } = fault;
  if (!file || start === undefined) return text;
  const { line } = file.getLineAndCharacterOfPosition(start);
  return `${relative(root, file.fileName)}:${line + 1} ${text}`;
}
