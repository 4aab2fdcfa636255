/** The manual page, in the man macros that every Unix formats (man(7)), made from the command tree. */
import { allIn, type CommandNode, type Taken } from './tree.js';

/** A text that no macro or escape can begin in. */
function shown(text: string): string {
  const escaped = text.replaceAll('\\', '\\e').replaceAll('-', '\\-').replace(/[’‘]/g, '\\(aq');
  return escaped
    .replace(/^(['.])/gm, '\\&$1')
    .replace(/\s+/g, ' ')
    .trim();
}

const bold = (text: string): string => `\\fB${shown(text)}\\fR`;
const italic = (text: string): string => `\\fI${shown(text)}\\fR`;

function takenWords({ name, isMany, isNeeded }: Taken): string {
  const words = `${italic(name)}${isMany ? ' ...' : ''}`;
  return isNeeded ? words : `[${words}]`;
}

const optionWords = ({ name, short, value }: Taken): string =>
  [short, name]
    .flatMap((each) => (each === undefined ? [] : [bold(each)]))
    .join(', ')
    .concat(value === undefined ? '' : ` ${italic(value)}`);

function commandLines({ path, aliases, about, takes, options }: CommandNode): string[] {
  const also = aliases.length === 0 ? [] : [`Also ${aliases.map(bold).join(', ')}.`];
  return [
    `.SS "mudlark ${path.join(' ')}"`,
    `${[bold(`mudlark ${path.join(' ')}`), ...(options.length > 1 ? ['[options]'] : []), ...takes.map(takenWords)].join(' ')}`,
    '.PP',
    `${shown(about)}.`,
    ...also,
    ...takes
      .filter(({ about: said }) => said !== '')
      .flatMap((taken) => ['.TP', takenWords(taken), shown(taken.about)]),
    ...options
      .filter(({ name }) => name !== '--help')
      .flatMap((option) => ['.TP', optionWords(option), shown(option.about)]),
  ];
}

/**
 * The page.
 * @param version of the program, for its foot
 */
export function manualPage(root: CommandNode, version: string): string {
  const commands = allIn(root).filter(({ path, below }) => path.length > 0 && below.length === 0);
  const groups = allIn(root).filter(({ path, below }) => path.length > 0 && below.length > 0);
  const listed = [...groups, ...commands].sort((one, other) =>
    one.path.join(' ') < other.path.join(' ') ? -1 : 1,
  );
  return `${[
    `.TH MUDLARK 1 "" "mudlark ${shown(version)}" "Mudlark"`,
    '.SH NAME',
    'mudlark \\- decide a watercolour mixture before the brush touches paper',
    '.SH SYNOPSIS',
    `${bold('mudlark')} [${italic('command')}] [options]`,
    '.SH DESCRIPTION',
    shown(root.about),
    'Without a command it opens the home screen, in a terminal.',
    'Each command tells more, with examples, by',
    `${bold('--help')}.`,
    '.SH OPTIONS',
    ...root.options.flatMap((option) => ['.TP', optionWords(option), shown(option.about)]),
    '.SH COMMANDS',
    ...listed.flatMap(commandLines),
    '.SH EXIT STATUS',
    '.TP',
    '0',
    'done',
    '.TP',
    '1',
    'failure: a file that cannot be read or kept, drills with faults',
    '.TP',
    '2',
    'wrong usage',
    '.TP',
    '130',
    'interrupted',
    '.SH ENVIRONMENT',
    '.TP',
    `${bold('NO_COLOR')}`,
    'no colours, where it is set and not empty',
    '.TP',
    `${bold('XDG_CONFIG_HOME')}, ${bold('XDG_DATA_HOME')}`,
    "where settings and learners' records are kept",
  ].join('\n')}\n`;
}
