/** The things, places and lights that made-up scenes are put together from. All our own. */

/** A thing to paint: "the mooring buoy"; where it is; whether it takes a plural verb. */
export interface Thing {
  readonly name: string;
  readonly where: string;
  readonly plural?: boolean;
}

/** Colour of the wash that a drill starts with, coarse enough to choose a thing by. */
export type Hue = 'red' | 'orange' | 'brown' | 'yellow' | 'green' | 'blue' | 'violet' | 'grey';

const at = (name: string, where: string): Thing => ({ name, where });
const many = (name: string, where: string): Thing => ({ name, where, plural: true });

export const THINGS: Readonly<Record<Hue, readonly Thing[]>> = {
  red: [
    at('the mooring buoy', 'in the harbour'),
    at('the hull of the crab boat', 'on the slip'),
    many('the fire buckets', 'on the quay wall'),
    many('the cherries', 'in the orchard basket'),
    at('the paprika heap', 'on the spice stall'),
    at('the tailgate of the tip cart', 'in the quarry'),
    many('the apples', 'on the lowest branch'),
    at('the awning', 'over the fruit stall'),
  ],
  orange: [
    many('the fishing floats', 'along the net'),
    many('the roof tiles', 'above the harbour'),
    many('the pumpkins', 'by the market steps'),
    many('the apricots', 'on the drying racks'),
    at('the winch drum', 'at the quarry edge'),
    many('the marigolds', 'under the pear trees'),
    many('the clay pots', 'on the potter’s barrow'),
  ],
  brown: [
    at('the tarred net loft', 'behind the quay'),
    at('the sailcloth', 'drying on the boom'),
    many('the walnut baskets', 'at the market'),
    at('the cut bank', 'at the quarry mouth'),
    at('the ploughed strip', 'between the apple rows'),
    many('the loaves', 'on the baker’s trestle'),
    many('the rusted rails', 'of the quarry line'),
  ],
  yellow: [
    many('the lemons', 'on the fruit stall'),
    many('the oilskins', 'on the quay pegs'),
    at('the gorse', 'above the quarry'),
    many('the quinces', 'in the long grass'),
    at('the straw', 'under the market crates'),
    at('the dory', 'at the harbour steps'),
    many('the leaves of the old pear tree', 'by the orchard wall'),
  ],
  green: [
    at('the weed', 'on the harbour ladder'),
    many('the cabbages', 'on the barrow'),
    at('the ivy', 'on the quarry face'),
    at('the grass', 'between the orchard rows'),
    many('the olive branches', 'over the wall'),
    at('the shutter', 'of the chandler’s shop'),
    many('the bottles', 'on the oil stall'),
  ],
  blue: [
    at('the boat shed', 'at the end of the quay'),
    many('the fish boxes', 'stacked by the ice house'),
    at('the tarpaulin', 'over the stone crusher'),
    at('the pool', 'on the quarry floor'),
    many('the plums', 'in the bottom crate'),
    at('the smock', 'on the orchard ladder'),
    at('the enamel basin', 'on the mussel stall'),
  ],
  violet: [
    many('the figs', 'on the market tray'),
    many('the damsons', 'in the picking basket'),
    at('the heather', 'on the quarry lip'),
    many('the aubergines', 'on the corner stall'),
    many('the lavender bunches', 'hung under the awning'),
    many('the mussel shells', 'on the slip'),
  ],
  grey: [
    at('the slate roof', 'of the ice house'),
    many('the granite kerbs', 'of the quay'),
    at('the stone dust', 'on the quarry road'),
    at('the orchard wall', 'in the wet'),
    many('the cobbles', 'of the market square'),
  ],
};

/** Opening sentences: what the light does. */
export const LIGHTS: readonly string[] = [
  'Low sun from the left.',
  'Noon, and hardly a cloud.',
  'Early light, still cool.',
  'The last hour of sun.',
  'Bright haze over everything.',
  'A clear day after rain.',
  'Hard side light.',
  'Thin cloud, soft light.',
];

/** Things that are grey by nature, for neutral washes. */
export const GREYS: readonly Thing[] = [
  many('the wet slates', 'over the harbour'),
  at('the fog', 'on the hill behind the quay'),
  at('the quarry face', 'in drizzle'),
  many('the paving stones', 'of the empty market'),
  many('the bare trunks', 'at the orchard edge'),
  at('the breakwater', 'at low tide'),
  many('the zinc tubs', 'behind the fish stall'),
  many('the gravel heaps', 'by the loading ramp'),
];

/** Places where a dark must be deep. */
export const DARKS: readonly Thing[] = [
  at('the gap', 'under the jetty'),
  at('the doorway', 'behind the fish stall'),
  at('the tunnel mouth', 'at the quarry'),
  at('the cellar hatch', 'beside the cider press'),
  at('the inside', 'of the upturned boat'),
  at('the slot', 'between two market carts'),
  at('the well shaft', 'in the orchard'),
  at('the hold', 'of the coal lighter'),
];

/** What may be asked to grow duller with distance. */
export const DISTANCE: readonly string[] = [
  'It stands behind everything else and must not call.',
  'Haze lies between it and the eye.',
  'It belongs to the background: let it step back.',
  'The focus is elsewhere, so this has to speak softly.',
  'One colour here must lead, and it is not this one.',
  'Beside the figures in front it is far too loud.',
];

/** The same for things in the plural. */
export const DISTANCE_MANY: readonly string[] = [
  'They stand behind everything else and must not call.',
  'Haze lies between them and the eye.',
  'They belong to the background: let them step back.',
  'The focus is elsewhere, so these have to speak softly.',
  'One colour here must lead, and it is not this one.',
  'Beside the figures in front they are far too loud.',
];
