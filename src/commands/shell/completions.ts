// biome-ignore-all lint/suspicious/noTemplateCurlyInString: the scripts are shells' own, and have variables of theirs
/**
 * Completion scripts for three shells, made from the command tree: static text, so that pressing Tab starts no program. Words of commands,
 * options and ids are letters, digits, hyphens and `=`: nothing has to be quoted but what a person wrote, the descriptions.
 */
import { allIn, type CommandNode, type Taken } from './tree.js';
import { type Shell, type Values, valuesOf } from './values.js';

/** Every name of a command: "practise", "practice". */
const namesOf = ({ path, aliases }: CommandNode): string[] => [path.at(-1) ?? '', ...aliases];

/** What may stand first after a command: those below it, its options, the values of its first argument. */
function wordsAfter(node: CommandNode, known: Values): string[] {
  return [
    ...node.below.flatMap(namesOf),
    ...node.options.flatMap(({ name, short }) => (short === undefined ? [name] : [name, short])),
    ...node.takes.flatMap((taken) => valuesOf(taken, known)),
  ];
}

/** Options of a command that are followed by a value. */
const valued = ({ options }: CommandNode): Taken[] => options.filter(({ value }) => value !== undefined);

/** The command of a word list, step by step: a word that is no command below it changes nothing. */
function walkLines(root: CommandNode): string[] {
  return allIn(root)
    .filter(({ path }) => path.length > 0)
    .map((node) => {
      const above = node.path.slice(0, -1).join(' ');
      const words = namesOf(node).map((name) => `'${above}|${name}'`);
      return `      ${words.join('|')}) at='${node.path.join(' ')}' ;;`;
    });
}

/** Cases by "command|option" of the values that may follow; an option whose value is not known gives the way to files. */
function valueLines(root: CommandNode, known: Values, act: (values: readonly string[]) => string): string[] {
  return allIn(root).flatMap((node) =>
    valued(node).map((option) => {
      const names = [option.name, ...(option.short === undefined ? [] : [option.short])];
      const keys = names.map((name) => `'${node.path.join(' ')}|${name}'`);
      return `    ${keys.join('|')}) ${act(valuesOf(option, known))} ;;`;
    }),
  );
}

function bash(root: CommandNode, known: Values): string[] {
  return [
    '# Completions of mudlark for bash. Put it where your bash looks for them, or: source FILE',
    '_mudlark() {',
    "  local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} at='' words='' i",
    '  for ((i = 1; i < COMP_CWORD; i++)); do',
    '    case "$at|${COMP_WORDS[i]}" in',
    ...walkLines(root),
    '    esac',
    '  done',
    '  compopt +o nospace 2>/dev/null',
    '  case "$at|$before" in',
    ...valueLines(root, known, (values) =>
      values.length === 0
        ? 'COMPREPLY=(); return'
        : `COMPREPLY=($(compgen -W '${values.join(' ')}' -- "$current")); return`,
    ),
    '  esac',
    '  case "$at" in',
    ...allIn(root).map(
      (node) => `    '${node.path.join(' ')}') words='${wordsAfter(node, known).join(' ')}' ;;`,
    ),
    '  esac',
    '  COMPREPLY=($(compgen -W "$words" -- "$current"))',
    '  [[ ${#COMPREPLY[@]} -eq 1 && ${COMPREPLY[0]} == *= ]] && compopt -o nospace 2>/dev/null',
    '  return 0',
    '}',
    'complete -o default -F _mudlark mudlark',
  ];
}

function zsh(root: CommandNode, known: Values): string[] {
  return [
    '#compdef mudlark',
    '# Completions of mudlark for zsh. Put it into a folder of your fpath as _mudlark.',
    "  local before=${words[CURRENT-1]} at='' i",
    '  local -a offered',
    '  for ((i = 2; i < CURRENT; i++)); do',
    '    case "$at|${words[i]}" in',
    ...walkLines(root),
    '    esac',
    '  done',
    '  case "$at|$before" in',
    ...valueLines(root, known, (values) =>
      values.length === 0
        ? '_files; return'
        : `offered=(${values.join(' ')}); compadd ${values.every((value) => value.endsWith('=')) ? "-S '' " : ''}-a offered; return`,
    ),
    '  esac',
    '  case "$at" in',
    ...allIn(root).map(
      (node) => `    '${node.path.join(' ')}') offered=(${wordsAfter(node, known).join(' ')}) ;;`,
    ),
    '  esac',
    '  compadd -a offered',
    '  _files',
  ];
}

/** Text between single quotes, as fish reads it. */
const fishQuoted = (text: string): string => `'${text.replace(/[\\']/g, '\\$&')}'`;

function fish(root: CommandNode, known: Values): string[] {
  const nodes = allIn(root);
  return [
    '# Completions of mudlark for fish. Put it into ~/.config/fish/completions as mudlark.fish.',
    'function __mudlark_at',
    "  set -l at ''",
    '  for word in (commandline -opc)[2..-1]',
    '    switch "$at|$word"',
    ...nodes
      .filter(({ path }) => path.length > 0)
      .flatMap((node) => [
        `      case ${namesOf(node)
          .map((name) => `'${node.path.slice(0, -1).join(' ')}|${name}'`)
          .join(' ')}`,
        `        set at '${node.path.join(' ')}'`,
      ]),
    '    end',
    '  end',
    '  test "$at" = "$argv[1]"',
    'end',
    ...nodes.flatMap((node) => {
      const here = `complete -c mudlark -n "__mudlark_at '${node.path.join(' ')}'"`;
      const offer = (words: readonly string[], about: string): string =>
        `${here} -a '${words.join(' ')}' -d ${fishQuoted(about)}`;
      return [
        ...node.below.map((child) => offer(namesOf(child), child.about)),
        ...node.takes.flatMap((taken) => {
          const values = valuesOf(taken, known);
          return values.length === 0 ? [] : [offer(values, taken.about)];
        }),
        ...node.options.map((option) => {
          const short = option.short === undefined ? '' : ` -s ${option.short.slice(1)}`;
          const values = valuesOf(option, known);
          const takes =
            option.value === undefined ? '' : values.length === 0 ? ' -r' : ` -x -a '${values.join(' ')}'`;
          return `${here}${short} -l ${option.name.slice(2)}${takes} -d ${fishQuoted(option.about)}`;
        }),
      ];
    }),
  ];
}

const SCRIPTS: Readonly<Record<Shell, (root: CommandNode, known: Values) => string[]>> = { bash, zsh, fish };

/** The script of a shell. */
export const completionScript = (shell: Shell, root: CommandNode, known: Values): string =>
  `${SCRIPTS[shell](root, known).join('\n')}\n`;
