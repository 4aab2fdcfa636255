/** The documents point at what is there. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOMS = readdirSync('src')
  .map((room) => `src/${room}/README.md`)
  .filter((path) => existsSync(path));
const DOCUMENTS = ['README.md', 'DEVELOPERS.md', ...ROOMS];

/** What stands in code is no link. */
const proseOf = (text: string): string => text.replace(/^```[\s\S]*?^```/gm, '').replace(/`[^`\n]*`/g, '');

/** Where the links and pictures of a document point, but for those to other hosts. */
const targetsOf = (text: string): string[] =>
  [...proseOf(text).matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target = '']) => target)
    .filter((target) => !/^[a-z]+:/.test(target));

/** The name that a heading has in a link: lower case, blanks as hyphens, no other signs. */
const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');

const anchorsIn = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(/^#{1,6} (.+)$/gm)].map(([, heading = '']) => anchorOf(heading));

/** Links of a document that lead nowhere. */
function broken(document: string): string[] {
  return targetsOf(readFileSync(document, 'utf8')).filter((target) => {
    const [path = '', anchor] = target.split('#');
    const file = path === '' ? document : join(dirname(document), path);
    return !existsSync(file) || (anchor !== undefined && !anchorsIn(file).includes(anchor));
  });
}

describe.each(DOCUMENTS)('%s', (document) => {
  it('has no link that leads nowhere', () => {
    expect(broken(document)).toEqual([]);
  });

  it('is reached from README or DEVELOPERS', () => {
    const linked = ['README.md', 'DEVELOPERS.md'].flatMap((start) => targetsOf(readFileSync(start, 'utf8')));
    expect([...linked.map((target) => target.split('#')[0]), 'README.md', 'DEVELOPERS.md']).toContain(
      document,
    );
  });
});

it('finds a link that leads nowhere', () => {
  expect(targetsOf('[one](src/none.md), ![two](a.svg), `[three](b)`, [four](https://example.org)')).toEqual([
    'src/none.md',
    'a.svg',
  ]);
});
