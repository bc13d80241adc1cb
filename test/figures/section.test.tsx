import { describe, it } from 'vitest';
import { HoleSection } from '../../components/drawing/HoleSection';
import { planFor, SECTIONS } from './plans';
import { expectPicture } from './snapshot';

describe('the hole section', () => {
  for (const [name, { unit = 'mm', ...input }] of Object.entries(SECTIONS)) {
    it(`draws ${name}`, async () => {
      const { plan, request } = planFor(input);
      await expectPicture(
        `section-${name}`,
        <HoleSection plan={plan} request={request} unit={unit} />,
      );
    });
  }
});
