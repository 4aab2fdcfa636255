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
    did: 'let the second paint take over',
    instead: 'Halve the second paint, then halve it again; add by touches.',
  },
  {
    id: 'too-little',
    did: 'used too little of the second paint to change anything',
    instead: 'Double the second paint and look again.',
  },
  {
    id: 'hue-slipped',
    did: 'let the hue slip too far',
    instead: 'Take a second paint nearer to the first on the wheel, or less of it.',
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
];

export const IDEAS: ReadonlyMap<string, Idea> = new Map(LIST.map((idea) => [idea.id, idea]));
