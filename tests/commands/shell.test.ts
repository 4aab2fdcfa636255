/** Completions and the manual page: of the real command tree, the bash script tried in bash itself. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Command } from 'commander';
import { beforeAll, describe, expect, it } from 'vitest';
import { addBoxCommands } from '../../src/commands/program-box.js';
import { addClassroomCommands } from '../../src/commands/program-classroom.js';
import { addPaintCommands } from '../../src/commands/program-paint.js';
import { addShellCommands } from '../../src/commands/program-shell.js';
import { completionScript } from '../../src/commands/shell/completions.js';
import { manualPage } from '../../src/commands/shell/manual.js';
import { allIn, type CommandNode, treeOf } from '../../src/commands/shell/tree.js';
import { knownValues, SHELLS } from '../../src/commands/shell/values.js';

let root: CommandNode;
let script: string;

beforeAll(() => {
  const command = new Command('mudlark').description('A tutor.');
  const program = { command, print: () => {}, exit: () => {} };
  addPaintCommands(program);
  addBoxCommands(program, '1.2.3');
  addClassroomCommands(program, '1.2.3');
  addShellCommands(program, '1.2.3');
  root = treeOf(command);
  script = join(mkdtempSync(join(tmpdir(), 'mudlark-shell-')), 'mudlark.bash');
  writeFileSync(script, completionScript('bash', root, knownValues()));
});

/** What bash offers after words, the last of them begun. */
function offered(...words: string[]): string[] {
  const run = `source "$1"; shift; COMP_WORDS=(mudlark "$@"); COMP_CWORD=$#; _mudlark; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const out = execFileSync('bash', ['-c', run, 'bash', script, ...words], { encoding: 'utf8' });
  return out.split('\n').filter(Boolean);
}

describe('the bash script', () => {
  it('offers commands, then those below them', () => {
    expect(offered('rec')).toEqual(['recipe']);
    expect(offered('quiz', 'wr')).toEqual(['write']);
    expect(offered('quiz', '')).toEqual(expect.arrayContaining(['mark', 'sit', 'room', '--help']));
  });
  it('offers the options of the command that stands there, and no other', () => {
    expect(offered('recipe', '--g')).toEqual(['--goal']);
    expect(offered('quiz', 'write', '--no-b')).toEqual(['--no-back']);
    expect(offered('mix', '--go')).toEqual([]);
  });
  it('offers ids where an option or an argument takes them', () => {
    expect(offered('recipe', '--goal', 'r')).toEqual(['rich']);
    expect(offered('quiz', 'write', '--families', 'darken')).toEqual(['darken-bright']);
    expect(offered('mix', 'burnt-s')).toEqual(['burnt-sienna=']);
    expect(offered('pigments', 'show', 'viri')).toEqual(['viridian']);
  });
  it('leaves the way to files after an option that takes one', () => {
    expect(offered('quiz', 'write', '--out', '')).toEqual([]);
  });
});

describe.each(SHELLS)('the script for %s', (shell) => {
  it('names every command, option and id', () => {
    const text = completionScript(shell, root, knownValues());
    for (const { path, options } of allIn(root)) {
      if (path.length > 0) expect(text).toContain(path.at(-1));
      for (const { name } of options) expect(text).toContain(shell === 'fish' ? `-l ${name.slice(2)}` : name);
    }
    expect(text).toContain('burnt-sienna');
  });
});

/** Macros of man(7), of which the page uses these. */
const MACROS = ['.TH', '.SH', '.SS', '.TP', '.PP'];

describe('the manual page', () => {
  it('has every command with all its options', () => {
    const page = manualPage(root, '1.2.3').replaceAll('\\-', '-');
    for (const { path, options } of allIn(root)) {
      if (path.length === 0) continue;
      expect(page).toContain(`.SS "mudlark ${path.join(' ')}"`);
      for (const { name } of options) expect(page).toContain(`\\fB${name}\\fR`);
    }
  });
  it('lets no text begin a macro or an escape', () => {
    const evil = { ...root, about: ".so /etc/passwd\n'br \\*[x] \\n(.z" };
    const lines = manualPage(evil, '1.2.3').split('\n');
    for (const line of lines.filter((each) => /^[.']/.test(each)))
      expect(MACROS).toContain(line.split(' ')[0]);
    for (const written of lines.join('\n').matchAll(/\\(.)/g)) expect('-e&f(').toContain(written[1]);
  });
});
