/** The question of a drill that words none of its own: it asks what the drill leaves open, and only that. */
import { listWords } from '../text/list-words.js';
import { sentence } from '../words/laid.js';
import { findFamily } from './families.js';
import { addedPaint, type MixDrill } from './kinds/mix/schema.js';
import type { ShadowValuesDrill } from './kinds/shadow-values/schema.js';

type OpenMix = Pick<MixDrill, 'start' | 'tray' | 'amounts' | 'glazes' | 'strokes' | 'thins'> & {
  readonly goal?: Pick<MixDrill['goal'], 'aim'>;
};

/** Aims that a family's own question does not fit: a shade is not kept bright, and what is farther off is not only dulled. */
const ASK_OF_AIM: Readonly<Partial<Record<MixDrill['goal']['aim'], string>>> = {
  shade: 'Put it in shade, neither glowing nor muddy',
  distance: 'Send it farther off',
};

/** What a mixture leaves open: "which second paint, how much, and how much water". */
function openWords(drill: OpenMix): string {
  const { tray, amounts, glazes, strokes, thins } = drill;
  const isPaintOpen = tray.length > 1;
  const ways = [amounts, glazes, strokes].filter((list) => list.length > 0);
  const isAmountOpen = ways.length > 1 || (ways[0]?.length ?? 0) > 1;
  const amount =
    ways.length > 1 || strokes.length > 0
      ? 'how is it laid'
      : glazes.length > 0
        ? 'how strong a glaze'
        : `how much${isPaintOpen ? '' : ' of it'}`;
  const open = [
    ...(isPaintOpen ? [`which ${addedPaint(drill)}`] : []),
    ...(isAmountOpen ? [amount] : []),
    ...(thins.length > 1 ? ['how much water'] : []),
  ];
  return open.length === 2 ? open.join(', and ') : listWords(open).replace(/ and (?=how)/, ', and ');
}

function shadowsAsk(things: ShadowValuesDrill['things']): string {
  const count = (kind: string): number => things.filter(({ shadow }) => shadow === kind).length;
  const [shades, casts] = [count('shade'), count('cast')];
  const parts = [
    ...(shades === 0 ? [] : [shades === 1 ? 'the shaded side' : 'the shaded sides']),
    ...(casts === 0 ? [] : [casts === 1 ? 'the cast shadow' : 'the cast shadows']),
  ];
  return `How dark ${things.length === 1 ? 'is' : 'are'} ${listWords(parts)}?`;
}

/** The question: of a mixture what it is for, by the family, and then what is open; of shadows those that are asked. */
export function familyAsk(
  family: string,
  drill:
    | ({ readonly kind: 'mix' } & OpenMix)
    | ({ readonly kind: 'shadow-values' } & Pick<ShadowValuesDrill, 'things'>)
    | { readonly kind: string },
): string {
  const { ask = '', isLead = false } = findFamily(family) ?? {};
  if ('tray' in drill) {
    const open = openWords(drill);
    const lead = (drill.goal && ASK_OF_AIM[drill.goal.aim]) ?? ask;
    return isLead ? `${lead}: ${open}?` : `${sentence(open)}?`;
  }
  if (drill.kind === 'shadow-values' && 'things' in drill) return shadowsAsk(drill.things);
  return isLead ? `${ask}.` : ask;
}
