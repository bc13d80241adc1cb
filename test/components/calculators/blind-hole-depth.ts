export { engine } from '../../../components/calculators/blind-hole-depth/engine';
export { EXAMPLE } from '../../../components/calculators/blind-hole-depth/examples';
export { INPUTS } from '../../../components/calculators/blind-hole-depth/inputs';
export { WORDS } from '../../../components/words/en/calculators/blind-hole-depth/messages';
export { BlindHoleDepth as View } from '../../../components/calculators/blind-hole-depth/view';
