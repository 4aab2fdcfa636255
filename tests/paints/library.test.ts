import { describe, expect, test } from 'vitest';
import { chromaOf, reflectanceToLab } from '../../src/colour/index.js';
import { loadAtLightness } from '../../src/paints/calibration/tinting.js';
import { appearanceOf, CATALOGUE } from '../../src/paints/catalogue.js';
import { evidenceOf, findPaint, libraryStudio, type Pigment, paintOf } from '../../src/paints/index.js';
import { LIBRARY } from '../../src/paints/library.js';
import { puddleReflectance } from '../../src/washes/index.js';

const STUDIO = libraryStudio();
const { paper: PAPER, palettes: PALETTES } = STUDIO;
const findPigment = (id: string): Pigment | undefined => findPaint(STUDIO, id);

function masstone(pigment: Pigment, strength = 1) {
  return reflectanceToLab(
    puddleReflectance([{ pigment, load: strength * pigment.fullStrength }], PAPER),
    'D65-2',
  );
}

describe('library', () => {
  test('holds at least forty pigments with unique ids and all three grades of evidence', () => {
    expect(LIBRARY.length).toBeGreaterThanOrEqual(40);
    expect(new Set(LIBRARY.map(({ id }) => id)).size).toBe(LIBRARY.length);
    const grades = new Set(LIBRARY.map(({ evidence }) => evidence));
    expect([...grades].toSorted()).toEqual(['estimated', 'measured', 'transferred']);
  });

  test('a mixture is known no better than the paint that is known least, in whatever order', () => {
    const known = ['estimated', 'transferred', 'measured'] as const;
    for (const [at, weaker] of known.entries()) {
      for (const other of known.slice(at)) {
        expect(evidenceOf([{ evidence: weaker }, { evidence: other }])).toBe(weaker);
        expect(evidenceOf([{ evidence: other }, { evidence: other }, { evidence: weaker }])).toBe(weaker);
      }
    }
    expect(evidenceOf([])).toBe('measured');
  });

  test.each([
    'PB29 PB28 PB35 PB36 PB15:3 PB15:1 PB27 PB60 PG50 PG18 PG7 PG36 PG17 PBk31 PY129 PY3 PY97 PY150 PO49 PY35 PY184 PBr24',
    'PY43 PY42 PBr7 PR101 PO20 PO73 PR108 PR254 PV19 PR122 PR83 PR177 PR179 PO48 PV23 PV14 PV16 PV15 PBk9 PBk6 PW4 PW6',
  ])('has the pigments of a wide box: %s', (codes) => {
    const known = new Set(LIBRARY.flatMap(({ ci }) => ci));
    expect(codes.split(' ').filter((code) => !known.has(code))).toEqual([]);
  });

  test('has the thirteen measured paints under their first ids', () => {
    const measured = LIBRARY.filter(({ evidence }) => evidence === 'measured').map(({ id }) => id);
    expect(measured).toHaveLength(13);
    for (const id of ['burnt-sienna', 'alizarin-crimson', 'ultramarine-blue', 'sap-green', 'chinese-white']) {
      expect(measured).toContain(id);
    }
  });

  test.each(LIBRARY.map((pigment) => [pigment.id, pigment] as const))(
    '%s is a sound record',
    (_, pigment) => {
      for (const values of [pigment.K, pigment.S]) {
        expect(values).toHaveLength(38);
        expect(values.every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
      }
      // a carbon black has the least, the thickest measured film the most
      expect(pigment.fullStrength).toBeGreaterThan(0.05);
      expect(pigment.fullStrength).toBeLessThan(1.5);
      expect(pigment.provenance.source).not.toBe('');
      expect(pigment.provenance.method).not.toContain('undefined');
      for (const code of pigment.ci) expect(code).toMatch(/^P(B|Bk|Br|G|O|R|V|W|Y)\d+(:\d)?$/);
      if (pigment.ci.length === 0) expect(pigment.ciNote).toBeDefined();
      // a white paint may come out lighter than the paper
      if (!pigment.ci.some((code) => code.startsWith('PW'))) {
        expect(masstone(pigment).l).toBeLessThanOrEqual(masstone(pigment, 0.2).l + 0.01);
      }
    },
  );

  test('measured paints lie at full strength where the published lightness is, except light ones and white', () => {
    for (const pigment of LIBRARY.filter(({ evidence }) => evidence === 'measured')) {
      const lightness = appearanceOf(pigment.id).masstone?.[0];
      if (lightness === undefined || lightness > 80) continue;
      expect(loadAtLightness(pigment, lightness, PAPER)).toBeCloseTo(pigment.fullStrength, 2);
    }
    expect(findPigment('chinese-white')?.fullStrength).toBe(1);
  });

  test('cadmium, cobalt and nickel pigments carry a caution, and so do names under which they or lead are sold', () => {
    for (const pigment of LIBRARY) {
      if (/cadmium|cobalt|cerulean|nickel|aureolin|naples/i.test(pigment.name)) {
        expect(pigment.hazard?.level, pigment.id).toBe('care');
      }
    }
  });

  test('lightfastness warns of alizarin crimson and names its test', () => {
    const light = findPigment('alizarin-crimson')?.handling.lightfastness?.value;
    expect(light?.blueWoolTint).toBeLessThanOrEqual(2);
    expect(light?.test).toContain('sun');
  });

  test('neutral tint is nearly neutral and dark', () => {
    const tint = paintOf(STUDIO, 'neutral-tint');
    expect(chromaOf(masstone(tint))).toBeLessThan(10);
    expect(masstone(tint).l).toBeLessThan(35);
  });

  test('a transferred pigment reaches its published masstone within the spread between makers', () => {
    for (const { id, evidence, provenance } of LIBRARY) {
      if (evidence === 'transferred') expect(provenance.residualDeltaE00 ?? 0, id).toBeLessThanOrEqual(3.3);
    }
  });

  test('every paint says how its strength is known', () => {
    const known = (wanted: string) => LIBRARY.filter(({ strengthEvidence }) => strengthEvidence === wanted);
    expect(known('measured').map(({ evidence }) => evidence)).toEqual(Array(13).fill('measured'));
    expect(known('anchored').length).toBeGreaterThanOrEqual(20);
    for (const { provenance } of known('anchored'))
      expect(provenance.strengthMethod).toContain('factor of two');
    expect(findPigment('neutral-tint')?.strengthEvidence).toBe('assumed');
  });

  test('every entry of the catalogue that is estimated says what it starts from', () => {
    for (const entry of CATALOGUE.filter(({ evidence }) => evidence === 'estimated')) {
      expect(findPigment(entry.id)?.provenance.method, entry.id).toMatch(/K from|mixture/);
    }
  });
});

describe('palettes', () => {
  test('hold known pigments, each once, and keep their ids', () => {
    expect(PALETTES.map(({ id }) => id)).toEqual(['six', 'twelve', 'harbour', 'clear']);
    for (const { pigments } of PALETTES) {
      expect(new Set(pigments).size).toBe(pigments.length);
      for (const id of pigments) expect(findPigment(id), id).toBeDefined();
    }
  });
});
