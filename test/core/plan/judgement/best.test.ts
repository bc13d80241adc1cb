/** What may never be led with: a tap that breaks sharp, a form tap too large, a machine's tap by hand. */
import { describe, expect, it } from 'vitest';
import type { HoleRequest, MaterialId } from '../../../../core';
import { bestOf, codes, plan } from './ordinary';

const blind = { kind: 'blind' } as const;
const styled = (request: HoleRequest, style: string) =>
  plan(request).taps.filter((tap) => tap.style === style);

describe('strength before best', () => {
  it.each([
    ['#4-40', 10, 'nickel'],
    ['M1', 40, 'titanium'],
    ['M2', 4, 'nickel'],
  ] as const)(
    '%s × %s in %s: even a sharp tap breaks, so none is best',
    (thread, fullThread, material) => {
      const found = plan({ thread, fullThread, material, hole: blind });
      expect(bestOf(found)).toBeUndefined();
      const cut = found.taps.find(({ style }) => style === 'spiral-flute')!;
      expect(cut.tapShare.sharp).toBeGreaterThan(1);
      expect(cut.verdict).toBe('no');
      expect(codes(cut.reasons)).toContain('breaks-sharp');
      // No mill reaches forty diameters either: less thread is what helps there.
      expect(codes(found.remedies)).toContain(thread === 'M1' ? 'less-thread' : 'thread-mill');
      expect(codes(found.warnings)).toContain('tap-will-break');
    },
  );

  it('a tap that only a worn edge would break leads where no other stands it', () => {
    const found = plan({ thread: '#6-32', fullThread: 6, material: 'nickel', hole: blind });
    const best = bestOf(found)!;
    expect(best.tapShare.sharp).toBeLessThan(1);
    expect(best.tapShare.worn).toBeGreaterThan(1);
    expect(codes(found.warnings)).toContain('tap-will-break');
  });
});

describe('sizes of form taps', () => {
  const noChips = (thread: string, material: MaterialId): HoleRequest => ({
    thread,
    material,
    hole: { kind: 'through', thickness: 20, chipsMayFall: false },
  });

  it.each([
    ['M16', 'steel-low', 'best'],
    ['M18', 'steel-low', 'works'],
    ['M20', 'steel-low', 'works'],
    ['M22', 'steel-low', 'no'],
    ['M64', 'stainless-austenitic', 'no'],
    ['M10', 'stainless-austenitic', 'best'],
    ['M12', 'stainless-austenitic', 'works'],
    ['5/8-11', 'al-wrought', 'best'],
    ['3/4-10', 'al-wrought', 'works'],
    ['7/8-9', 'al-wrought', 'no'],
    ['3/8-16', 'stainless-austenitic', 'best'],
    ['7/16-14', 'stainless-austenitic', 'works'],
  ] as const)('%s in %s where no chips may fall: %s', (thread, material, verdict) => {
    const [form] = styled(noChips(thread, material), 'form');
    expect(form!.verdict).toBe(verdict);
  });

  it('its torque is judged like any other: a spindle too weak for it gets a cutting tap', () => {
    const request = {
      ...noChips('M12', 'steel-low'),
      spindle: { drive: 'synchronous', torque: 30 },
    };
    const found = plan(request as HoleRequest);
    expect(bestOf(found)!.process).toBe('cut');
  });

  it('where the table says no or rarely no form tap is best', () => {
    for (const material of ['nickel', 'iron-ductile', 'iron-grey', 'titanium'] as const) {
      for (const tap of styled(noChips('M3', material), 'form')) {
        expect(tap.verdict).not.toBe('best');
      }
    }
  });
});

describe('taper pipe taps', () => {
  it.each(['1/4 NPT', '1/8-27 NPTF', 'Rc1/2'])(
    '%s: straight flute, 2½ to 3½ threads, nothing else',
    (thread) => {
      for (const hole of [blind, { kind: 'through', thickness: 25 }] as const) {
        const { taps } = plan({ thread, hole, material: 'steel-low' });
        const cut = taps.filter(({ process }) => process !== 'mill');
        expect(cut).toHaveLength(1);
        expect(cut[0]).toMatchObject({
          style: 'straight-flute',
          verdict: 'best',
          chamfer: { class: 'plug', form: '', threads: { min: 2.5, max: 3.5 } },
        });
        expect(codes(cut[0]!.reasons)).toContain('taper-pipe-tap');
        expect(codes(cut[0]!.reasons)).not.toContain('chips-wrong-way');
      }
    },
  );
});

describe('by hand', () => {
  const hand = (request: Omit<HoleRequest, 'spindle'>) =>
    plan({ ...request, spindle: { drive: 'hand' } });

  it('only a straight-flute set is best, in any metal and hole', () => {
    for (const material of [
      'steel-low',
      'al-wrought',
      'iron-grey',
      'stainless-austenitic',
    ] as const) {
      for (const hole of [blind, { kind: 'through', thickness: 12 }] as const) {
        const found = hand({ thread: 'M8', material, fullThread: 12, hole });
        expect(bestOf(found)!.style).toBe('straight-flute');
        for (const tap of found.taps) {
          if (tap.style === 'spiral-flute' || tap.style === 'form') expect(tap.verdict).toBe('no');
          if (tap.style === 'spiral-point') expect(tap.verdict).not.toBe('best');
        }
      }
    }
  });

  it('above 100 N·m sharp no', () => {
    const found = hand({ thread: 'M36', material: 'steel-medium', fullThread: 40, hole: blind });
    const straight = found.taps.find(({ style }) => style === 'straight-flute')!;
    expect(straight.torque.expected).toBeGreaterThan(100);
    expect(bestOf(found)).toBeUndefined();
    expect(codes(straight.reasons)).toContain('too-heavy-by-hand');
  });
});
