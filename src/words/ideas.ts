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
    instead: 'Leave the black; a dark neighbour of the colour brings value down and leaves the chroma.',
  },
  {
    id: 'took-a-white',
    did: 'took a white, which only makes a colour paler and chalkier',
    instead: 'Keep the white out: value comes down with a dark neighbour and goes up with water.',
  },
  {
    id: 'stayed-near',
    did: 'stayed near the colour where it had to be dulled',
    instead: 'Go across the wheel: a paint from the far side takes the chroma down quickly.',
  },
  {
    id: 'too-light',
    did: 'stopped too light',
    instead: 'Go darker than feels safe: more of the dark paint, or less water.',
  },
  {
    id: 'too-dark',
    did: 'went too dark',
    instead: 'Use less of the dark paint, or more water.',
  },
  {
    id: 'too-much',
    did: 'let the added paint take over',
    instead: 'Halve the added paint, then halve it again; add by touches.',
  },
  {
    id: 'too-little',
    did: 'used too little of the added paint',
    instead: 'Double the added paint and look again.',
  },
  {
    id: 'hue-slipped',
    did: 'let the hue slip too far',
    instead: 'Add a paint nearer to the hue that is asked, or less of this one.',
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
    instead: 'Keep the paint and change how it is laid: stirred in, glazed over, or as strokes beside it.',
  },
  {
    id: 'dull-neighbour',
    did: 'took a neighbour that is dull itself',
    instead:
      'A dull paint acts as if it lay farther round the wheel; take a brighter neighbour, or less of this one.',
  },
  {
    id: 'paint-too-pale',
    did: 'darkened with a paint that is not dark enough itself',
    instead: 'Add a paint whose own full strength is darker than the goal.',
  },
  {
    id: 'wrong-partner',
    did: 'took a partner that does not cancel the colour',
    instead:
      'Ask which paint swallows what is still left over, and trust the mixture more than the wheel’s picture.',
  },
  {
    id: 'lost-chroma',
    did: 'picked the mixture that loses the chroma',
    instead:
      'Look where the second paint sits on the wheel: the nearer, and the stronger itself, the more chroma stays.',
  },
  {
    id: 'dull-not-neutral',
    did: 'took a dull mixture for a neutral one',
    instead:
      'Ask which hue is left over: a green or violet rest means that the partner sits on the wrong side.',
  },
  {
    id: 'misread-value',
    did: 'let the strength of the colour hide its value',
    instead: 'Squint until the colour goes and only light and dark are left; then compare.',
  },
  {
    id: 'missed-target',
    did: 'landed further from the target than was needed',
    instead: 'Say the value first and find what reaches it; only then look at the chroma.',
  },
  {
    id: 'misjudged-drying',
    did: 'misjudged what drying takes',
    instead:
      'Drying takes chroma more than value, most from dark and strong washes; test on the same paper and wait.',
  },
  {
    id: 'order-slipped',
    did: 'put the mixtures in the wrong order',
    instead: 'Compare two at a time, the outer ones first; the middle one then falls into place.',
  },
  {
    id: 'gave-up-early',
    did: 'gave a value up that the paint can reach',
    instead: 'Lay the paint once at its thickest and remember that step: it is the end of its range.',
  },
  {
    id: 'asked-too-much',
    did: 'asked a paint for a dark that it does not have',
    instead: 'Change the paint, not the thickness: range belongs to the paint.',
  },
  {
    id: 'thickest-is-strongest',
    did: 'misplaced the strongest colour of a ladder',
    instead:
      'Many paints are strongest a little below their thickest; pale ones keep rising. Look for the middle washes first.',
  },
  {
    id: 'rule-in-grey-light',
    did: 'used the sun’s shadow rule under a grey sky',
    instead: 'Ask first where the light comes from: without sun there is hardly a shaded side.',
  },
  {
    id: 'cast-too-light',
    did: 'made the cast shadow no darker than the shaded side',
    instead: 'A cast shadow is cut off from the sun and gets less light back: about four tenths against six.',
  },
  {
    id: 'one-step-shadow',
    did: 'went down one step for a shadow, whatever was lit',
    instead: 'Take a share of the lit value, not a step: the lighter the thing, the deeper its shadow falls.',
  },
  {
    id: 'shade-glows',
    did: 'left too much chroma in the shade, so that it glows',
    instead: 'Chroma goes down with the light: multiply it by (shade L* + 16) over (lit L* + 16).',
  },
  {
    id: 'shade-to-mud',
    did: 'took so much chroma from the shade that it went to mud',
    instead: 'A shade keeps most of its colour: only what the light takes goes, no more.',
  },
  {
    id: 'expected-paler',
    did: 'expected the wash to dry clearly paler',
    instead:
      'On average drying moves value by a quarter of a step; do not correct value when only chroma went.',
  },
  {
    id: 'short-span',
    did: 'planned with too short a span of values',
    instead: 'Stretch the plan: paper at one end, a real dark at the other, and unequal shares between.',
  },
  {
    id: 'wrong-area',
    did: 'went to an area that has no fault',
    instead: 'Compare each area with its plan, value first, before touching any of them.',
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
    instead: 'Before you decide, set each claim beside the numbers of the case.',
  },
  {
    id: 'lifted-a-stain',
    did: 'tried to lift a paint that stains',
    instead: 'A staining paint stays; mend it by a glaze, or plan its value before it goes down.',
  },
  {
    id: 'judged-wet',
    did: 'judged a wash before it was dry',
    instead: 'Lay a patch on the same paper, wait until it is dry, and judge that.',
  },
  {
    id: 'upper-film',
    did: 'misjudged what the upper film does',
    instead:
      'Ask of the upper film whether it filters or covers: a clear one darkens, a covering one sends back light of its own.',
  },
  {
    id: 'turned-against',
    did: 'turned the hue of a shade the wrong way',
    instead:
      'In the shade greens may lean a little to blue and oranges to red; nothing leans to the light’s own side.',
  },
];

export const IDEAS: ReadonlyMap<string, Idea> = new Map(LIST.map((idea) => [idea.id, idea]));
