/** Names of materials, taps, chamfers and drives, as a setter says them. */

import type { Chamfer } from '../../core/chamfer/chamfer';
import type { MaterialId } from '../../core/material/material';
import type { HoleRequest, SpindleDrive, TapChoice } from '../../core/plan/types';
import type { TapStyle } from '../../core/tap/tap';
import type { Hand, ThreadSystem } from '../../core/thread/thread';
import { FLUIDS } from './en/fluids';
import * as words from './en/names';
import { threadRange } from './format';
import { say } from './say';

/** Materials in the groups and order a list shows them. */
export const materialGroups = words.MATERIAL_GROUPS;

/** Full name, for a list: `Austenitic stainless (304, 316)`. */
export function materialName(id: MaterialId): string {
  return words.MATERIALS[id];
}

/** The material of a request by the shop's own name where it has one: `Blue rack: austenitic stainless`. */
export function materialSaid({ material, ownMaterial }: HoleRequest): string {
  return ownMaterial
    ? `${ownMaterial.name}: ${words.MATERIALS_SHORT[material]}`
    : words.MATERIALS[material];
}

/** Short name, for the middle of a sentence: `austenitic stainless`. */
export function materialShort(id: MaterialId): string {
  return words.MATERIALS_SHORT[id];
}

/** `Spiral flute`, `Form tap`, … */
export function styleName(style: TapStyle): string {
  return words.STYLES[style].name;
}

/** The style as it stands before “tap”: `Spiral-flute`. */
export function styleBefore(style: TapStyle): string {
  return words.STYLES[style].before;
}

/**
 * A chamfer, count of threads first, since the words differ between countries:
 * `2–3 threads, semi-bottoming (form C)`. The ISO letter is given with metric threads.
 */
export function chamferText(chamfer: Chamfer, system: ThreadSystem): string {
  const { all, form } = words.CHAMFER_SAID;
  return say(all, {
    threads: threadRange(chamfer.threads),
    name: words.CHAMFERS[chamfer.class],
    form: system === 'metric' && chamfer.form ? say(form, { letter: chamfer.form }) : '',
  });
}

/** One tap in full: `Left-hand spiral flute, 2–3 threads, semi-bottoming (form C)`. */
export function tapName(
  choice: Pick<TapChoice, 'style' | 'hand' | 'chamfer' | 'process'>,
  system: ThreadSystem,
): string {
  const style = styleName(choice.style);
  const name =
    choice.hand === 'left' ? say(words.LEFT_HAND, { style: style.toLowerCase() }) : style;
  return choice.process === 'mill' ? name : `${name}, ${chamferText(choice.chamfer, system)}`;
}

/** What the tap is made of: `Powder steel, coated`. */
export function tapSteel({ substrate, coated }: NonNullable<HoleRequest['tool']>): string {
  const steel = words.TAP_STEELS[substrate];
  return coated ? say(words.COATED, { steel }) : steel;
}

/** `Synchronous`, `Floating holder`, … */
export function driveName(drive: SpindleDrive): string {
  return words.DRIVES[drive].name;
}

/** What the drive means, in a few words. */
export function driveHint(drive: SpindleDrive): string {
  return words.DRIVES[drive].hint;
}

/** `right hand` or `left hand`. */
export function handName(hand: Hand): string {
  return words.HANDS[hand];
}

/** Fluid the trade commonly uses in a material. Common practice; the safety data sheet rules. */
export function fluidText(id: MaterialId): string {
  return FLUIDS[id];
}
