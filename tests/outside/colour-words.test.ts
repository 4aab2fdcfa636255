// Colours in words against the ISCC-NBS names (Kelly and Judd 1976); source inside data/colour-iscc-nbs.json.
import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { colourInWords } from '../../src/colour/words.js';
import names from './data/colour-iscc-nbs.json' with { type: 'json' };

const toLab = converter('lab65');

/** Our noun for each noun of theirs. They say purplish red where painters say magenta, purplish blue for violet blue. */
const NOUNS: readonly (readonly [RegExp, RegExp])[] = [
  [/reddish brown$/, /reddish brown$/],
  [/yellowish brown$/, /yellowish brown$/],
  [/olive brown$/, /olive brown$/],
  [/ brown$/, / ?\bbrown$/],
  [/olive green$/, /olive green$/],
  [/ olive$/, /\bolive$/],
  [/yellow green$/, /yellow green$/],
  [/bluish green$/, /blue green$/],
  [/purplish blue$/, /violet blue$/],
  [/reddish purple$/, /(purple|magenta)$/],
  [/purplish red$/, /magenta$/],
  [/violet$/, /violet( blue)?$/],
  [/grey$/, /grey$/],
  [/(?<=deep )pink$/, /pink$/],
];

function nounFor(name: string): RegExp {
  const last = name.split(' ').at(-1) ?? '';
  return NOUNS.find(([theirs]) => theirs.test(name))?.[1] ?? new RegExp(`\\b${last}$`);
}

/** The centroid that we name otherwise: its C* of 10 is under the 12 up to which a colour is a tinged grey here. */
const OTHERWISE: Readonly<Record<string, string>> = { 'pale blue': 'bluish grey' };

describe.each(names.centroids as [string, string][])('ISCC-NBS %s (%s)', (name, hex) => {
  const lab = toLab(hex);
  if (!lab) throw new Error(`${hex} is not a colour`);
  const words = colourInWords(lab);

  it('has the same noun', () => {
    if (OTHERWISE[name]) expect(words).toBe(OTHERWISE[name]);
    else expect(words).toMatch(nounFor(name));
  });

  it('is called dark or pale, or neither, alike', () => {
    if (/^dark /.test(name)) expect(words).toMatch(/^(very )?dark /);
    else if (/^(light|pale) /.test(name)) expect(words).not.toMatch(/dark|deep|black/);
    else if (/^(vivid|strong|moderate|medium) /.test(name))
      expect(words).not.toMatch(/dark|pale|black|white/);
  });
});
