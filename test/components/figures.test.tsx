import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { DepthChart } from '../../components/chart/DepthChart';
import { ChipPath } from '../../components/drawing/ChipPath';
import { HoleSection } from '../../components/drawing/HoleSection';
import { planHole, type HoleRequest } from '../../core';
import { depthModel, SOURCE } from '../figures/charts';

afterEach(cleanup);

const request: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
  material: 'stainless-austenitic',
};

function section(asked: HoleRequest) {
  const plan = planHole(asked);
  if (!plan.ok) throw new Error('not planned');
  return <HoleSection plan={plan.value} request={asked} unit="mm" />;
}

describe('the hole section on a page', () => {
  it('is one image, named and described by its numbers', () => {
    render(section(request));
    const image = screen.getByRole('img', { name: /Section of the hole.*M8x1\.25-6H, blind/ });
    const described = document.getElementById(image.getAttribute('aria-describedby') ?? '');
    expect(described?.textContent).toMatch(
      /Full thread to 16\.0 mm.*19\.75 mm.*21\.0 mm.*23\.04 mm/,
    );
  });

  it('follows the inputs', () => {
    const { rerender } = render(section(request));
    rerender(section({ ...request, fullThread: 12 }));
    expect(screen.getAllByText('12.0').length).toBeGreaterThan(0);
    expect(screen.queryByText('16.0')).toBeNull();
  });

  it('puts its depths in a table with units in its head', () => {
    render(section(request));
    expect(
      screen.getByRole('columnheader', { name: 'From the face, mm', hidden: true }),
    ).toBeTruthy();
    const row = screen.getByRole('row', { name: /^tap to/, hidden: true });
    expect(row.textContent).toContain('19.75');
  });

  it('carries no style attribute, which the page’s policy would refuse', () => {
    const { container } = render(section(request));
    expect(container.querySelectorAll('[style]')).toHaveLength(0);
  });
});

describe('a chart on a page', () => {
  it('is drawn for two widths with names of their own', () => {
    const { container } = render(<DepthChart model={depthModel('mm')} source={SOURCE} />);
    const ids = [...container.querySelectorAll('[id]')].map((element) => element.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(container.querySelectorAll('svg[role="img"]')).toHaveLength(2);
  });

  it('says why instead when there is nothing to draw', () => {
    const { container } = render(
      <DepthChart model={depthModel('mm')} source={SOURCE} refusal="No chart: no thread." />,
    );
    expect(screen.getByText('No chart: no thread.')).toBeTruthy();
    expect(container.querySelector('svg')).toBeNull();
  });
});

describe('the chip path on a page', () => {
  it('says in words where the chip goes', () => {
    render(
      <ChipPath
        model={{
          lean: 35,
          noseOnly: false,
          cut: 'right',
          course: 'back',
          chips: 'long',
          hole: 'blind',
        }}
      />,
    );
    expect(
      screen.getByRole('img', { name: /Drawn back up the flute: right-hand tap/ }),
    ).toBeTruthy();
  });
});
