/** Why the mixture came out as it did: the spectra of its paints and of the mixture, and the part that both swallow. */
import { Box, Text } from 'ink';
import { wrapText } from '../../text/wrap.js';
import { Frame } from '../kit/frame.js';
import { frameParts, innerColumns } from '../kit/layout.js';
import { lookOf, spokenLook } from '../kit/look.js';
import { notesOf } from '../kit/notes.js';
import { type Piece, Rows } from '../kit/row.js';
import type { WhyScreen } from '../kit/state.js';
import { useSurroundings } from '../kit/surroundings.js';
import { patchLines } from '../kit/swatch.js';
import { CURVE_SIGNS, MIXTURE_SIGN, type Spectra, spectraOf, spectraPicture } from './spectra.js';

/** What the picture means, said in words. */
export function whyTexts({ paints, shared }: Spectra): string[] {
  if (paints.length < 2) {
    return [
      'One paint alone: more water lifts the whole curve, more paint lowers it where it already swallows.',
    ];
  }
  const both = paints.length === 2 ? 'both paints' : 'all the paints';
  return shared === ''
    ? [
        `There is no part of the light that ${both} swallow by half: what one takes another leaves, so the mixture stays light.`,
      ]
    : [
        `Under the curves: ${shared} is swallowed by ${both}. There the mixture goes dark.`,
        'What only one of them swallows is lost as well, by the share it has in the wash; what is left over is the colour you see.',
      ];
}

export function Why({ screen }: { readonly screen: WhyScreen }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const spectra = spectraOf(screen.back.attempt.entry.grade, world.studio);
  const columns = innerColumns(state.size);
  if (spectra === undefined) {
    return (
      <Frame title="Why">
        <Text>This answer was not a mixture; the explanation on the result is all there is.</Text>
      </Frame>
    );
  }
  const { valueScale, screenReader } = state.settings;
  const keys = [
    ...spectra.paints.map(({ name, reflectance }, index) => ({
      sign: CURVE_SIGNS[index] ?? '',
      name: `${name} alone`,
      look: lookOf(reflectance),
    })),
    { sign: MIXTURE_SIGN, name: 'the mixture', look: lookOf(spectra.mixture) },
  ];
  const texts = whyTexts(spectra);
  if (screenReader) {
    return (
      <Frame title="Why">
        {[...keys.map(({ name, look }) => `${name}: ${spokenLook(look, valueScale)}.`), ...texts].map(
          (line) => (
            <Text key={line}>{line}</Text>
          ),
        )}
      </Frame>
    );
  }
  const lines = texts.flatMap((text) => wrapText(text, columns));
  const body = frameParts(state, notesOf(state).length).body;
  const rows = Math.min(22, body - lines.length - keys.length - 2);
  return (
    <Frame title="Why: how much of each part of the light comes back">
      <Rows lines={spectraPicture(spectra, { columns: Math.min(columns, 96), rows, glyphs })} />
      <Box height={1} flexShrink={0} />
      <Rows
        lines={keys.map(({ sign, name, look }): Piece[] => [
          { text: `${sign} `, role: 'key' },
          ...(state.colourLevel === 0 ? [] : [...(patchLines(look.hex, 3, 1)[0] ?? []), { text: ' ' }]),
          { text: `${name}: ` },
          { text: spokenLook(look, valueScale), role: 'muted' },
        ])}
      />
      <Box height={1} flexShrink={0} />
      <Rows lines={lines.map((text): Piece[] => [{ text }])} />
    </Frame>
  );
}
