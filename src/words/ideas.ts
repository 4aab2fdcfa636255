/**
 * Mistaken ideas that an answer can show. A tally reads "7 of 12 " followed by `did`; advice for one learner is `instead`.
 * Kinds of drill name ideas by id, so that results of unlike drills can be counted together.
 */
export interface Idea {
  readonly id: string;
  readonly did: string;
  readonly instead: string;
}

const LIST: readonly Idea[] = [
  {
    id: 'went-across',
    did: 'went across the wheel where the colour had to stay',
    instead: 'Go round the wheel: take a neighbour of the colour that is itself dark.',
  },
  {
    id: 'took-a-neutral',
    did: 'darkened with a black or a grey, which takes the colour first',
    instead: 'Leave out blacks and greys: a dark neighbour keeps the colour going down.',
  },
  {
    id: 'took-a-white',
    did: 'took a white, which only makes a colour paler and chalkier',
    instead: 'Keep the white out: a dark neighbour takes value down, water takes it up.',
  },
  {
    id: 'stayed-near',
    did: 'stayed near the colour where it had to be dulled',
    instead: 'Go across the wheel: a paint from the far side takes the chroma quickly.',
  },
  {
    id: 'too-light',
    did: 'stopped too light',
    instead: 'Go darker than feels safe: more paint, or less water.',
  },
  {
    id: 'too-dark',
    did: 'went too dark',
    instead: 'Use less paint, or more water.',
  },
  {
    id: 'too-much',
    did: 'let the added paint take over',
    instead: 'Add by touches, and look after each: it takes less than one thinks.',
  },
  {
    id: 'too-little',
    did: 'used too little of the added paint',
    instead: 'Add more, a touch at a time, and look after each.',
  },
  {
    id: 'hue-slipped',
    did: 'let the hue slip too far',
    instead: 'Take a paint nearer to the hue that is asked.',
  },
  {
    id: 'brought-a-new-paint',
    did: 'brought a new paint where one of the painting’s own would do',
    instead: 'Look first at the paints that the painting already has.',
  },
  {
    id: 'wrong-lean',
    did: 'ended on the wrong side of grey',
    instead: 'Proportion sets the lean: name the side you want, then shift towards it.',
  },
  {
    id: 'wrong-way',
    did: 'took the right paint and laid it the wrong way',
    instead: 'Keep the paint, change the way: stirred in, glazed over, or strokes beside.',
  },
  {
    id: 'dull-neighbour',
    did: 'took a neighbour that is dull itself',
    instead: 'This neighbour is dull itself: take a brighter one, or less of this one.',
  },
  {
    id: 'paint-too-pale',
    did: 'darkened with a paint that is not dark enough itself',
    instead: 'Take a paint that is itself darker, laid thick, than what is asked.',
  },
  {
    id: 'wrong-partner',
    did: 'took a partner that does not cancel the colour',
    instead: 'Ask which paint swallows what is left over; the wheel only hints at it.',
  },
  {
    id: 'lost-chroma',
    did: 'picked the mixture that loses the chroma',
    instead: 'The nearer the second paint, and the stronger itself, the more chroma stays.',
  },
  {
    id: 'dull-not-neutral',
    did: 'took a dull mixture for a neutral one',
    instead: 'Ask which hue is left over: green or violet means a partner from elsewhere.',
  },
  {
    id: 'misread-value',
    did: 'let the strength of the colour hide its value',
    instead: 'Squint until the colour goes and only light and dark are left; compare.',
  },
  {
    id: 'missed-target',
    did: 'landed further from the target than was needed',
    instead: 'Say the value first and find what reaches it; only then look at chroma.',
  },
  {
    id: 'misjudged-drying',
    did: 'misjudged what drying takes',
    instead: 'Drying takes chroma more than value: test on the same paper, and wait.',
  },
  {
    id: 'order-slipped',
    did: 'put the mixtures in the wrong order',
    instead: 'Compare two at a time, the outer ones first; the middle falls into place.',
  },
  {
    id: 'gave-up-early',
    did: 'gave a value up that the paint can reach',
    instead: 'Lay the paint once at its thickest: that step is the end of its range.',
  },
  {
    id: 'asked-too-much',
    did: 'asked a paint for a dark that it does not have',
    instead: 'Change the paint, not the thickness: range belongs to the paint.',
  },
  {
    id: 'thickest-is-strongest',
    did: 'misplaced the strongest colour of a ladder',
    instead: 'Many paints are strongest a little below their thickest: look there first.',
  },
  {
    id: 'rule-in-grey-light',
    did: 'used the sun’s shadow rule under a grey sky',
    instead: 'Ask first where the light comes from: a grey sky hardly makes a shaded side.',
  },
  {
    id: 'cast-too-light',
    did: 'made the cast shadow no darker than the shaded side',
    instead: 'A cast shadow gets less light back: about four tenths, the shaded side six.',
  },
  {
    id: 'one-step-shadow',
    did: 'went down one step for a shadow, whatever was lit',
    instead: 'The lighter the thing, the more steps its shadow falls.',
  },
  {
    id: 'shade-glows',
    did: 'left too much chroma in the shade, so that it glows',
    instead: 'Let the colour go down with the light: less light, less chroma.',
  },
  {
    id: 'shade-to-mud',
    did: 'took so much chroma from the shade that it went to mud',
    instead: 'A shade keeps most of its colour: only what the light takes goes, no more.',
  },
  {
    id: 'expected-paler',
    did: 'expected the wash to dry clearly paler',
    instead: 'Drying moves value a quarter of a step; do not correct it for lost chroma.',
  },
  {
    id: 'wrong-area',
    did: 'went to an area that has no fault',
    instead: 'Compare each area with its plan, value first, before you touch any.',
  },
  {
    id: 'wrong-fault',
    did: 'found the area but misnamed the fault',
    instead: 'Value first, then chroma, then hue: name the first of them that is out.',
  },
  {
    id: 'repair-missed',
    did: 'chose a repair that leaves the area out of its plan',
    instead: 'Say what the repair does to value and to chroma before it goes down.',
  },
  {
    id: 'wrong-reason',
    did: 'took a reason that the case does not bear out',
    instead: 'Before you decide, hold each claim against the patches: value, then chroma.',
  },
  {
    id: 'lifted-a-stain',
    did: 'tried to lift a paint that stains',
    instead: 'A staining paint stays: mend it by a glaze, or plan its value beforehand.',
  },
  {
    id: 'judged-wet',
    did: 'judged a wash before it was dry',
    instead: 'Lay a patch on the same paper, wait until it is dry, and judge that.',
  },
  {
    id: 'upper-film',
    did: 'misjudged what the upper film does',
    instead: 'A clear upper film filters and darkens; a covering one sends back its own.',
  },
  {
    id: 'turned-against',
    did: 'turned the hue of a shade the wrong way',
    instead: 'In shade greens may lean to blue, oranges to red; none leans to the light.',
  },
];

export const IDEAS: ReadonlyMap<string, Idea> = new Map(LIST.map((idea) => [idea.id, idea]));
