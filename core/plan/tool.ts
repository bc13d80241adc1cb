/** What the tap is made of: how much faster it may run, and what it wants for that. */

import { TAP_SUBSTRATES, toolSpeedFactor, type Substrate } from '../cycle/tool-speed';
import type { Material } from '../material/material';
import { chipsShort } from '../material/table';
import type { Range } from '../units';
import type { Job } from './job';
import type { HoleRequest } from './types';

const AS_CHARTED: Record<(typeof TAP_SUBSTRATES)[number], Substrate> = {
  hss: 'hss',
  'hss-e': 'hss',
  pm: 'hss-powder',
  carbide: 'carbide',
};

/** True for a tool as `HoleRequest.tool` may be. Source: derived. */
export function toolKnown(tool: unknown): boolean {
  if (typeof tool !== 'object' || tool === null) return false;
  const { substrate, coated } = tool as Record<string, unknown>;
  const known = (TAP_SUBSTRATES as readonly unknown[]).includes(substrate);
  return known && (coated === undefined || typeof coated === 'boolean');
}

/** Where carbide earns its speed: feed and turn held together, and chips that break. Source: `common-practice`. */
export function carbideSuits({ spindle, material }: Pick<Job, 'spindle' | 'material'>): boolean {
  return spindle.drive === 'synchronous' && chipsShort(material.chips);
}

function factorOf(tool: HoleRequest['tool'], suits: boolean): Range {
  if (!tool || (tool.substrate === 'carbide' && !suits)) return { min: 1, max: 1 };
  return toolSpeedFactor(AS_CHARTED[tool.substrate], tool.coated ? 'coated' : 'plain', 'oil');
}

/**
 * The material with its speeds moved for the tap that cuts it, m/min; as it was for a bright HSS tap, and for
 * carbide where it does not suit. Source: `common-practice`, as the speed calculator.
 */
export function speedsWithTool(
  job: Pick<Job, 'spindle' | 'material' | 'request'>,
): Pick<Material, 'speed' | 'workHardens'> {
  const { speed, workHardens } = job.material;
  if (!speed) return { speed, workHardens };
  const { min, max } = factorOf(job.request.tool, carbideSuits(job));
  return { speed: { min: speed.min * min, max: speed.max * max }, workHardens };
}
