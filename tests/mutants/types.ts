/** Whether the compiler refuses a mutant: what `npm run types` stops needs no test. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { edited, type Mutant } from './mutators.ts';

/** Those of the mutants in whose own file the compiler finds a fault. */
export function typeFaults(root: string, mutants: readonly Mutant[]): ReadonlySet<Mutant> {
  if (mutants.length === 0) return new Set();
  const config = join(root, 'tsconfig.json');
  const { config: json } = ts.readConfigFile(config, ts.sys.readFile);
  const { options, fileNames } = ts.parseJsonConfigFileContent(json, ts.sys, root);
  let version = 0;
  let instead: { readonly path: string; readonly text: string } | null = null;
  const textOf = (path: string) => (instead?.path === path ? instead.text : ts.sys.readFile(path));
  const service = ts.createLanguageService({
    getCompilationSettings: () => ({ ...options, noEmit: true }),
    getScriptFileNames: () => fileNames,
    getScriptVersion: (path) => (instead?.path === path ? `mutant ${version}` : 'whole'),
    getScriptSnapshot: (path) => {
      const text = textOf(path);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getCurrentDirectory: () => root,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
    readDirectory: ts.sys.readDirectory,
  });
  return new Set(
    mutants.filter((mutant) => {
      const path = join(root, mutant.file);
      version += 1;
      instead = { path, text: edited(readFileSync(path, 'utf8'), mutant) };
      return service.getSemanticDiagnostics(path).length > 0;
    }),
  );
}
