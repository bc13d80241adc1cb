/** Each word that may stand on a line without changing it, and what may never be among them. */

import { describe, expect, test } from 'vitest';
import { planDrawing, readCallout } from '../../../core';
import { HARMLESS } from '../../../core/drawing/harmless';

const shop = { material: 'steel-medium' } as const;

describe('a harmless word', () => {
  test.each(HARMLESS.map(({ pattern, example }) => [String(pattern), example]))(
    '%s leaves its line ready: %s',
    (_, example) => {
      const [hole] = planDrawing([example], shop).holes;
      expect(hole?.callout.ok && hole.callout.value.notRead).toEqual([]);
      expect(hole?.verdict).toBe('ready');
      expect(hole?.callout.ok && hole.callout.value.harmless.length).toBeGreaterThan(0);
    },
  );
});

/** A process, a coating, a feature, a duty or a place. NEAR SIDE is the one place that changes nothing. */
const GRAVE = [
  ...['HARDEN', 'HARDENED', 'HEAT TREAT', 'CARBURIZE', 'NITRIDE', '58 HRC', 'WELD', 'WELDED', 'GRIND', 'LAP', 'HONE'],
  ...['ZINC', 'NICKEL', 'CHROME', 'PLATED', 'ANODIZE', 'ANODISED', 'COATED', 'PAINT', 'BLACK OXIDE', 'PASSIVATE', 'PHOSPHATE'],
  ...['KEYWAY', 'CROSS HOLE', 'BOSS', 'RIB', 'GALLERY', 'POCKET', 'SLOT', 'UNDERCUT', 'RELIEF GROOVE', 'COUNTERBORE'],
  ...['LIFTING', 'HOIST', 'EYE', 'PRESSURE TIGHT', 'STRUCTURAL', 'BRAKE', 'IMPLANT', 'SAFETY CRITICAL'],
  ...['FAR SIDE', 'BOTH SIDES', 'LH SIDE', 'REAR FACE', 'TOP', 'BOTTOM', 'INSIDE', 'UNDERNEATH', 'FLANGE', 'AT ASSEMBLY'],
  ...['INSERT', 'BUSH', 'LOCTITE', 'SEALANT', 'GREASE', 'MATCH DRILL', 'PER SKETCH', 'SEE NOTE 3', 'REF', 'OPTIONAL'],
]; // prettier-ignore

describe('a word that matters', () => {
  test.each(GRAVE)('%s is never harmless, and its line never ready', (word) => {
    const line = `M8x1.25-6H ↧16 ${word}`;
    const [hole] = planDrawing([line], shop).holes;
    expect(hole?.verdict).not.toBe('ready');
    const read = readCallout(line);
    const harmless = read.ok ? read.value.harmless : [];
    // Small words beside the one that counts may be let go, the one itself may not.
    const grave = word.split(' ').filter((each) => !['AT', 'PER', 'SEE'].includes(each));
    for (const each of grave) expect(harmless).not.toContain(each);
  });
});
