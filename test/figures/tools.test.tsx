import { describe, it } from 'vitest';
import { ChipPath } from '../../components/drawing/ChipPath';
import type { ChipModel } from '../../components/drawing/chipMarks';
import { TapTip } from '../../components/drawing/TapTip';
import type { TipModel } from '../../components/drawing/tipMarks';
import { expectPicture } from './snapshot';

const base: TipModel = {
  diameter: 10,
  pitch: 1.5,
  style: 'straight-flute',
  hand: 'right',
  flutes: 4,
  chamfers: [
    { threads: 8.5, words: ['7–10', 'taper'] },
    { threads: 4, words: ['3–5', 'plug'] },
    { threads: 2.5, words: ['2–3', 'semi-', 'bottoming'] },
    { threads: 1.5, words: ['1–2', 'bottoming'] },
  ],
};

describe('ends of taps', () => {
  it('stand side by side on one floor', () =>
    expectPicture('tip-classes', <TapTip model={base} />));

  it('wind to the right when spiral-fluted', () =>
    expectPicture(
      'tip-spiral-flute',
      <TapTip model={{ ...base, style: 'spiral-flute', flutes: 3, chosen: 2 }} />,
    ));

  it('wind the other way on a left-hand tap', () =>
    expectPicture(
      'tip-left-hand',
      <TapTip model={{ ...base, style: 'spiral-flute', flutes: 3, hand: 'left' }} />,
    ));

  it('differ by style', () =>
    expectPicture(
      'tip-spiral-point',
      <TapTip
        model={{
          ...base,
          style: 'spiral-point',
          flutes: 3,
          chamfers: base.chamfers.slice(1, 2),
        }}
      />,
    ));

  it('have no flutes to speak of when they form', () =>
    expectPicture(
      'tip-form',
      <TapTip model={{ ...base, style: 'form', chamfers: base.chamfers.slice(1, 3) }} />,
    ));
});

describe('the cutting face and the chip', () => {
  const turns: Record<string, ChipModel> = {
    'chip-back': {
      lean: 35,
      noseOnly: false,
      cut: 'right',
      course: 'back',
      chips: 'long',
      hole: 'blind',
    },
    'chip-ahead-through': {
      lean: -15,
      noseOnly: true,
      cut: 'right',
      course: 'ahead',
      chips: 'long',
      hole: 'through',
    },
    'chip-ahead-blind': {
      lean: -15,
      noseOnly: true,
      cut: 'right',
      course: 'ahead',
      chips: 'long',
      hole: 'blind',
    },
    'chip-stays-short': {
      lean: 0,
      noseOnly: false,
      cut: 'right',
      course: 'stays',
      chips: 'short',
      hole: 'blind',
    },
    'chip-left-back': {
      lean: -35,
      noseOnly: false,
      cut: 'left',
      course: 'back',
      chips: 'long',
      hole: 'blind',
    },
    'chip-left-ahead': {
      lean: 15,
      noseOnly: true,
      cut: 'left',
      course: 'ahead',
      chips: 'short',
      hole: 'through',
    },
    'chip-back-short': {
      lean: 20,
      noseOnly: false,
      cut: 'right',
      course: 'back',
      chips: 'short',
      hole: 'through',
    },
    'chip-stays-long': {
      lean: 0,
      noseOnly: false,
      cut: 'right',
      course: 'stays',
      chips: 'long',
      hole: 'blind',
    },
  };
  for (const [name, model] of Object.entries(turns)) {
    it(`draws ${name}`, () => expectPicture(name, <ChipPath model={model} />));
  }
});
