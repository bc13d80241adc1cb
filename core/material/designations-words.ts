/**
 * What people call a material without a designation, and names that mean two materials. Common practice.
 * Words are looked up like designations: spaces and dashes do not count.
 */

import type { StateRule } from './grade-group';
import type { MaterialId } from './material';

/** The kinds a word may promise, as the beginnings of the rows that keep the promise. */
export const KINDS = {
  steel: ['steel-', 'stainless-'],
  'plain-steel': ['steel-'],
  stainless: ['stainless-'],
  iron: ['iron-'],
  aluminium: ['al-'],
  'cast-aluminium': ['al-cast'],
  magnesium: ['magnesium'],
  zinc: ['zinc'],
  brass: ['brass-free', 'copper'],
  bronze: ['bronze', 'brass-free'],
  copper: ['copper', 'brass-free', 'bronze'],
  titanium: ['titanium'],
  nickel: ['nickel'],
  plastic: ['plastic'],
} as const;

export type Kind = keyof typeof KINDS;

/** A name that says its row, though no grade: `usual` where it takes the usual one of several. */
export interface PlainName {
  words: string;
  kind: Kind;
  row: MaterialId;
  rule?: StateRule;
  usual?: boolean;
}

// prettier-ignore
export const PLAIN_NAMES: readonly PlainName[] = [
  { words: 'mild steel|low carbon steel|structural steel|constructional steel|black mild steel|bright mild steel|BMS|CRS|HRS|cold rolled steel|hot rolled steel|cold drawn steel|baustahl|acero dulce|acero suave|acero bajo en carbono', kind: 'plain-steel', row: 'steel-low' },
  { words: 'free cutting steel|free machining steel|leaded steel|automatenstahl|acero de facil mecanizado', kind: 'plain-steel', row: 'steel-free' },
  { words: 'medium carbon steel|acero medio en carbono', kind: 'plain-steel', row: 'steel-medium' },
  { words: 'alloy steel|chrome moly|chromoly|cromo molibdeno|acero aleado|vergutungsstahl', kind: 'plain-steel', row: 'steel-alloy', rule: 'quenched' },
  { words: 'tool steel|silver steel|drill rod|gauge plate|ground flat stock|bearing steel|werkzeugstahl|acero de herramientas|acero para herramientas', kind: 'plain-steel', row: 'steel-alloy', rule: 'tool' },
  { words: 'spring steel|federstahl|acero para muelles', kind: 'plain-steel', row: 'steel-alloy', rule: 'quenched' },
  { words: 'case hardening steel|carburizing steel|einsatzstahl|acero de cementacion', kind: 'plain-steel', row: 'steel-alloy', rule: 'case' },
  { words: 'austenitic stainless|austenitic stainless steel|austenitic|austenitico|inoxidable austenitico', kind: 'stainless', row: 'stainless-austenitic' },
  { words: 'ferritic stainless|ferritic stainless steel|ferritic|inoxidable ferritico', kind: 'stainless', row: 'stainless-ferritic' },
  { words: 'martensitic stainless|martensitic stainless steel|martensitic|inoxidable martensitico', kind: 'stainless', row: 'stainless-ferritic', rule: 'martensitic' },
  { words: 'duplex|duplex stainless|duplex stainless steel|super duplex|inoxidable duplex', kind: 'stainless', row: 'stainless-duplex' },
  { words: 'free machining stainless|free cutting stainless', kind: 'stainless', row: 'stainless-free' },
  { words: 'cast iron|CI|iron|iron casting|guss|gusseisen|fundicion|hierro fundido', kind: 'iron', row: 'iron-grey', usual: true },
  { words: 'grey iron|gray iron|grey cast iron|gray cast iron|grauguss|fundicion gris', kind: 'iron', row: 'iron-grey' },
  { words: 'ductile iron|ductile cast iron|SG iron|SGI|nodular iron|spheroidal graphite iron|spharoguss|fundicion ductil|fundicion nodular|malleable iron|temperguss|fundicion maleable|compacted graphite iron|CGI|vermicular iron', kind: 'iron', row: 'iron-ductile' },
  { words: 'magnesium|magnesium alloy|magnesio', kind: 'magnesium', row: 'magnesium' },
  { words: 'zinc|zinc die casting|zinc die cast|die cast zinc|zinc alloy|zink|zinkdruckguss|cinc|zinc fundido', kind: 'zinc', row: 'zinc' },
  { words: 'brass|messing|laton|laiton', kind: 'brass', row: 'brass-free', usual: true },
  { words: 'free cutting brass|free machining brass|leaded brass|turning brass|clock brass|zerspanungsmessing|laton de facil mecanizado', kind: 'brass', row: 'brass-free' },
  { words: 'cartridge brass|70/30 brass|alpha brass|naval brass|gilding metal|nickel silver|neusilber|alpaca', kind: 'brass', row: 'copper' },
  { words: 'bronze|bronce|tin bronze|phosphor bronze|phos bronze|bearing bronze|gunmetal|leaded bronze|rotguss', kind: 'bronze', row: 'bronze' },
  { words: 'aluminium bronze|aluminum bronze|nickel aluminium bronze|nickel aluminum bronze|manganese bronze|silicon bronze|bronce de aluminio', kind: 'copper', row: 'bronze' },
  { words: 'beryllium copper|BeCu|copper beryllium|kupferberyllium|cobre al berilio', kind: 'copper', row: 'bronze', rule: 'aged-copper' },
  { words: 'copper|pure copper|electrolytic copper|OFHC|OFHC copper|kupfer|cobre|tellurium copper|tough pitch copper', kind: 'copper', row: 'copper' },
  { words: 'titanium|titan|titanio|ti|titanium alloy', kind: 'titanium', row: 'titanium' },
  { words: 'nickel alloy|nickel base alloy|nickel based alloy|nickel superalloy|aleacion de niquel', kind: 'nickel', row: 'nickel' },
  { words: 'plastic|kunststoff|plastico', kind: 'plastic', row: 'plastic', usual: true },
  { words: 'glass filled nylon|glass filled plastic|glass reinforced nylon|fibreglass|fiberglass|glass fibre|glass fiber|carbon fibre|carbon fiber|filled plastic|nylon con fibra de vidrio|fibra de vidrio|fibra de carbono', kind: 'plastic', row: 'plastic-filled' },
];

/** Words that name a kind and leave the row open, with what to type instead. */
export const OPEN_NAMES: readonly { words: string; kind: Kind; offers: readonly string[] }[] = [
  {
    words: 'carbon steel|plain carbon steel|kohlenstoffstahl|acero al carbono',
    kind: 'plain-steel',
    offers: ['mild steel', 'C45'],
  },
  {
    words: 'high speed steel|schnellarbeitsstahl|acero rapido',
    kind: 'plain-steel',
    offers: ['M2 HSS', 'M42 HSS'],
  },
  {
    words: 'steel|stahl|acero|acier',
    kind: 'steel',
    offers: ['mild steel', 'C45', '4140 HT', 'tool steel'],
  },
  {
    words:
      'stainless|stainless steel|SS|SST|CRES|inox|niro|edelstahl|nichtrostender stahl|inoxidable|acero inoxidable|acier inoxydable',
    kind: 'stainless',
    offers: ['303', '304', '430', '17-4PH'],
  },
  {
    words: 'aluminium|aluminum|alu|alum|aluminio|aluminium alloy|aluminum alloy|al',
    kind: 'aluminium',
    offers: ['6061-T6', '7075-T6', 'A356', 'ADC12'],
  },
  {
    words:
      'cast aluminium|cast aluminum|die cast aluminium|die cast aluminum|aluminium casting|aluminum casting|aluminiumguss|aluguss|aluminio fundido',
    kind: 'cast-aluminium',
    offers: ['A356', 'A380', 'ADC12'],
  },
  { words: 'nickel|niquel', kind: 'nickel', offers: ['Alloy 625', 'Alloy 718', 'Ni99.2'] },
];

/** A name that two materials share. Each offer reads by itself; a word of the kind beside the name decides. */
// prettier-ignore
export const COLLISIONS: readonly { names: string; offers: readonly string[] }[] = [
  // Tool steel, or the grade of stainless fasteners (ISO 3506).
  { names: 'A2', offers: ['1.2363', 'A2-70'] },
  { names: 'A4', offers: ['T30104', 'A4-80'] },
  // A steel by its carbon, or the first two digits of a copper alloy's number.
  { names: 'C10', offers: ['1.0301', 'C10100'] },
  { names: 'C15', offers: ['1.0401', 'C15000'] },
  { names: 'C22', offers: ['1.0402', 'C22000'] },
  { names: 'C35', offers: ['1.0501', 'C35300'] },
  { names: 'C60', offers: ['1.0601', 'C63000'] },
  // SAE steels and wrought aluminium both have four digits.
  { names: '1050', offers: ['SAE 1050', '1050A'] },
  { names: '1060', offers: ['SAE 1060', 'AW-1060'] },
  { names: '1070', offers: ['SAE 1070', '1070A'] },
  { names: '1080', offers: ['SAE 1080', '1080A'] },
  { names: '4032', offers: ['SAE 4032', 'AW-4032'] },
  { names: '4047', offers: ['SAE 4047', 'AW-4047'] },
  // Stainless, brass, bronze and die-cast aluminium by three digits.
  { names: '360', offers: ['C36000', 'A360'] },
  { names: '380', offers: ['A380', 'C38500'] },
  { names: '356', offers: ['A356', 'C35600'] },
  { names: '630', offers: ['17-4PH', 'C63000'] },
  { names: '660', offers: ['C93200', 'S66286'] },
  // A high-speed steel, or the thread it cuts.
  { names: 'M2', offers: ['M2 HSS'] },
  { names: 'M35', offers: ['M35 HSS'] },
  { names: 'M42', offers: ['M42 HSS'] },
  { names: 'HSS', offers: ['M2 HSS', 'S355J2'] },
  // A grade of titanium, of iron, or of screw.
  { names: 'Grade1', offers: ['Ti Grade 1'] },
  { names: 'Grade2', offers: ['Ti Grade 2'] },
  { names: 'Grade3', offers: ['Ti Grade 3'] },
  { names: 'Grade4', offers: ['Ti Grade 4'] },
  { names: 'Grade5', offers: ['Ti Grade 5'] },
  { names: 'Grade7', offers: ['Ti Grade 7'] },
  { names: 'Grade9', offers: ['Ti Grade 9'] },
  { names: 'Grade23', offers: ['Ti Grade 23'] },
  { names: 'Class20|No20', offers: ['A48-20'] },
  { names: 'Class25|No25', offers: ['A48-25'] },
  { names: 'Class30|No30', offers: ['A48-30'] },
  { names: 'Class35|No35', offers: ['A48-35'] },
  { names: 'Class40|No40', offers: ['A48-40'] },
  { names: 'Class50|No50', offers: ['A48-50'] },
  { names: 'Grade150', offers: ['EN-GJL-150'] },
  { names: 'Grade200', offers: ['EN-GJL-200'] },
  { names: 'Grade250', offers: ['EN-GJL-250'] },
  { names: 'Grade300', offers: ['EN-GJL-300'] },
  // Mild steel, or brass in German.
  { names: 'MS', offers: ['mild steel', 'Ms58'] },
  // A free-cutting steel of BS 970, or the letters in front of any European number.
  { names: 'EN1', offers: ['EN1A', 'EN1B'] },
  // Without its steel's number it is a strength.
  { names: 'ASTMA356', offers: ['A356.0'] },
];
