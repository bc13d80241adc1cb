export { engine } from '../../../components/calculators/chip-room/engine';
export { EXAMPLE } from '../../../components/calculators/chip-room/examples';
export { INPUTS } from '../../../components/calculators/chip-room/inputs';
export { WORDS } from '../../../components/words/en/calculators/chip-room/messages';
export { ChipRoom as View } from '../../../components/calculators/chip-room/view';
