/** What is wrong with the layout of a YAML file, in the words of someone who writes drills and quizzes, not of a parser. */
import type { ErrorCode, YAMLError } from 'yaml';

const QUOTES = 'put the sentence in quotes, "like this"';

const INDENT = 'this line begins too far left or right: lines of one list begin in one column, with blanks';

const WORDS: Partial<Record<ErrorCode, string>> = {
  BAD_SCALAR_START: `a sentence cannot begin with this sign: ${QUOTES}`,
  BAD_DQ_ESCAPE:
    'a \\ inside "quotes" has a meaning of its own: write it twice, or put the sentence in \'single quotes\'',
  BAD_INDENT: INDENT,
  BLOCK_IN_FLOW: 'inside brackets a comma is missing between two things, or a bracket is not closed',
  MISSING_CHAR: 'a sign is missing: a comma between two things, a colon after a key, or a blank before a #',
  MULTILINE_IMPLICIT_KEY:
    'there is no key here: each line begins with a key, a colon and a blank, as in "title: Week 3"; a longer sentence goes in quotes',
  TAB_AS_INDENT: 'this line begins with a tab: use blanks',
  UNEXPECTED_TOKEN: `there is a sign too many, or words after a closing quote: ${QUOTES}, with 'single quotes' inside it`,
  RESOURCE_EXHAUSTION: 'nested too deep; check that it is the right file',
  MULTIPLE_DOCS: 'a second document begins here; put it in a file of its own',
};

const ANY = `this cannot be read: if it is a sentence, ${QUOTES}; a text must not begin with & * ! | or >`;

/** What is wrong, in one line. @param line the line that the fault is on */
export function syntaxFault({ code, message }: YAMLError, line: string): string {
  if (code === 'BLOCK_AS_IMPLICIT_KEY')
    return /:\s.*:(\s|$)/.test(line) ? `a second colon and a blank stand on this line: ${QUOTES}` : INDENT;
  if (/Missing closing ["']quote/.test(message))
    return 'a quote is opened and never closed: put one at the end of the sentence as well';
  if (/must be sufficiently indented and end with/.test(message))
    return 'a bracket is opened and never closed: put one at the end as well';
  return WORDS[code] ?? ANY;
}
