/**
 * The families of drills: one skill each, in the order they are taught. Value comes first, but not alone: the two central
 * families of mixing stand between, so that the first set already asks for a decision.
 */

/** A skill that drills train. */
export interface Family {
  readonly id: string;
  readonly name: string;
  /** The part of the course: value, darkening, neutrals, wheel and strength, application, judgement. */
  readonly block: string;
  /** What the learner can do afterwards. */
  readonly skill: string;
  /** The question, where a drill does not word its own. */
  readonly ask: string;
  /** That is only what it is for: what is open is asked after it (see ask.ts). */
  readonly isLead?: true;
  /** Families easily taken for this one; practice mixes them, because telling them apart is the skill. */
  readonly alike: readonly string[];
}

export const FAMILIES: readonly Family[] = [
  {
    id: 'one-paint-ladder',
    name: 'Ladder of one paint',
    block: 'value',
    skill: 'set value by water alone, and know how dark a paint can go',
    ask: 'How strong must each wash be?',
    alike: [],
  },
  {
    id: 'darken-bright',
    name: 'Darken it and keep it bright',
    block: 'darkening',
    skill: 'go darker and lose no more colour than less light would take',
    ask: 'Make it darker and keep it bright',
    isLead: true,
    alike: ['shade-chroma', 'dull-on-purpose'],
  },
  {
    id: 'three-values',
    name: 'Three values before colour',
    block: 'value',
    skill: 'sort a scene into light, middle and dark, in unequal shares',
    ask: 'Light, middle or dark?',
    alike: [],
  },
  {
    id: 'dull-on-purpose',
    name: 'Dull it on purpose',
    block: 'neutrals',
    skill: 'take chroma away on purpose: the value held for a background, lifted for a distance',
    ask: 'Dull it on purpose',
    isLead: true,
    alike: ['darken-bright', 'neutraliser'],
  },
  {
    id: 'light-and-shadow',
    name: 'Lit, shaded, cast',
    block: 'value',
    skill: 'work out the values of shade and cast shadow from the lit one',
    ask: 'How dark is each shadow?',
    alike: [],
  },
  {
    id: 'shade-chroma',
    name: 'How much colour is left in a shade',
    block: 'darkening',
    skill: 'predict the chroma of a shade, not only its value',
    ask: 'How much chroma should the shade have?',
    alike: ['darken-bright'],
  },
  {
    id: 'neutraliser',
    name: 'Find the neutraliser',
    block: 'neutrals',
    skill: 'find the paint that takes a colour all the way to grey',
    ask: 'Bring it to grey',
    isLead: true,
    alike: ['deep-dark', 'dull-on-purpose'],
  },
  {
    id: 'around-across',
    name: 'Around or across the wheel',
    block: 'wheel and strength',
    skill: 'foretell whether two paints keep their colour together or take it from each other',
    ask: 'What will happen to the chroma?',
    alike: [],
  },
  {
    id: 'grey-lean',
    name: 'Set the lean of a grey',
    block: 'neutrals',
    skill: 'steer a grey warm or cool without changing its value',
    ask: 'Set the lean of the grey',
    isLead: true,
    alike: [],
  },
  {
    id: 'deep-dark',
    name: 'A dark that stays deep',
    block: 'darkening',
    skill: 'reach the bottom of the value scale without a black, and know what the dark leans to',
    ask: 'Reach the dark without a black',
    isLead: true,
    alike: ['neutraliser'],
  },
  {
    id: 'tinting-strength',
    name: 'How strong is it?',
    block: 'wheel and strength',
    skill: 'set amounts for paints of unequal strength',
    ask: 'How strong is it?',
    alike: [],
  },
  {
    id: 'ways-of-applying',
    name: 'Puddle, glaze or strokes',
    block: 'application',
    skill: 'choose whether paints are stirred together, glazed or set side by side',
    ask: 'Which way of applying?',
    alike: ['layer-order'],
  },
  {
    id: 'layer-order',
    name: 'Layers in order',
    block: 'application',
    skill: 'plan which layer goes down first, and what the next does to it',
    ask: 'In what order do the layers go down?',
    alike: ['ways-of-applying'],
  },
  {
    id: 'wet-and-dry',
    name: 'Wet now, dry later',
    block: 'application',
    skill: 'judge a wet wash by what it will be when dry',
    ask: 'What will it be when it is dry?',
    alike: [],
  },
  {
    id: 'diagnosis',
    name: 'What is wrong with this passage?',
    block: 'judgement',
    skill: 'find the fault in a passage and the one best repair',
    ask: 'What is wrong, and what is the one best repair?',
    alike: [],
  },
];

export const FAMILY_IDS: readonly string[] = FAMILIES.map(({ id }) => id);

/** The family with this id, or undefined. */
export function findFamily(id: string): Family | undefined {
  return FAMILIES.find((family) => family.id === id);
}
