/**
 * What people call the columns of a hole table, in English, German, French, Spanish and Italian: bare words, without
 * accents, points and brackets. Common practice.
 */

import type { ColumnKind } from './columns';

const NUMBER = '(?:no|nr|num|number|numero|nummer|numerus|id)';
const THREAD =
  '(?:thread|thd|tap|tapped|gewinde|filetage|taraudage|rosca|roscado|filettatura|filetto|maschiatura)';
const HOLE = '(?:hole|bore|bohr|bohrung|loch|kernloch|trou|percage|agujero|taladro|foro)';
const DRILL =
  '(?:(?:tap|pilot) )?(?:drill|drl|pilot|kernloch|bohrer|foret|percage|avant trou|broca|taladro|preforo|punta|pretaladro)';
const DEEP = '(?:depth|deep|dp|tiefe|profondeur|prof|profundidad|profondita)';
const DIAMETER = '(?:dia|diam|diameter|durchmesser|diametre|diametro|size|grosse|taille)';
const SMALL = '(?:of|de|du|des|der|di|del|della|pour|per|the|l) ';

const named = (...patterns: string[]) =>
  patterns.map((pattern) => new RegExp(`^(?:${pattern})$`, 'u'));

/** Tried in this order: what is said more closely stands first. */
export const COLUMN_NAMES: readonly (readonly [ColumnKind, readonly RegExp[]])[] = [
  [
    'tool',
    named(
      `(?:tool|t|wkz|wz|werkzeug|outil|herramienta|utensile)(?: ${NUMBER})?`,
      `(?:tap|gewindebohrer|taraud|macho|maschio) ${NUMBER}`,
      `${NUMBER} (?:${SMALL})?(?:tool|outil|herramienta|utensile)`,
      'werkzeugnummer|werkzeugnr|toolnumber',
    ),
  ],
  [
    'quantity',
    named(
      'qty|qnty|quant|quantity|count|counts|pcs|pieces|places|plcs|plc|each|ea|off|x',
      `${NUMBER} off|(?:no|number|quantity|qty) of(?: (?:holes|places|threads))?|holes|how many`,
      'anzahl|anz|menge|stuck|stk|st|stuckzahl|stckzahl|anzahl (?:bohrungen|gewinde|locher)',
      'qte|quantite|nb|nbre|nombre(?: de (?:trous|taraudages))?',
      'cant|cantidad|uds|unidades|ud|piezas|(?:no|numero) de (?:agujeros|roscas|taladros)',
      'qta|quantita|pezzi|pz|(?:no|n|numero)(?: di)? fori|fori',
    ),
  ],
  [
    'drill-depth',
    named(
      `(?:${HOLE}|${DRILL}) ?${DEEP}`,
      `${DEEP} (?:${SMALL})?(?:${HOLE}|${DRILL})`,
      'bohrtiefe|lochtiefe|bohrungstiefe|kernlochtiefe|kernlochbohrtiefe',
    ),
  ],
  [
    'depth',
    named(
      `(?:(?:full|min|minimum|usable|effective) )?(?:${THREAD} ?)?(?:${DEEP}|length)(?: (?:min|minimum|full ${THREAD}))?`,
      `(?:full|usable|effective) ${THREAD}`,
      `${DEEP} (?:${SMALL})?${THREAD}|${DEEP} (?:utile|util|utili)|gewindetiefe|gewindelange|nutzbare (?:gewindetiefe|lange)|einschraubtiefe`,
      `(?:longueur|longitud|lunghezza) (?:${SMALL})?${THREAD}`,
    ),
  ],
  [
    'drill',
    named(
      `${DRILL}(?: ?${DIAMETER})?`,
      `(?:${DIAMETER} )?(?:${SMALL})?${DRILL}`,
      `${HOLE} ${DIAMETER}|${DIAMETER} (?:${SMALL})?${HOLE}|dia|diameter|durchmesser|diametre|diametro`,
      'kernlochdurchmesser|kernlochbohrung|bohrungsdurchmesser|bohrdurchmesser|kernloch dia|bohrer dia',
    ),
  ],
  [
    'thickness',
    named(
      '(?:(?:part|plate|sheet|wall|material) )?(?:thickness|thk)|dicke|wandstarke|blechdicke|materialdicke|plattendicke',
      'epaisseur|ep|espesor|spessore',
    ),
  ],
  [
    'through',
    named(
      `(?:thru|through|thro)(?: ?(?:${HOLE}|all))?|durchgang|durchgehend|durch|debouchant|traversant|pasante|passante|pass|durchgangsbohrung|${HOLE} (?:debouchant|pasante|passante)`,
      '(?:thru|through)(?: or)? blind',
    ),
  ],
  ['pitch', named('pitch|tpi|threads per inch|steigung|pas|paso|passo')],
  [
    'class',
    named(
      `(?:${THREAD} )?(?:class|fit|tolerance|tol|toleranz|toleranzklasse|classe|clase|tolerancia|tolleranza|ajuste)`,
    ),
  ],
  [
    'countersink',
    named(
      'csk|csink|countersink|chamfer|senkung|ansenkung|fase|fraisure|chanfrein|avellanado|svasatura',
    ),
  ],
  [
    'remark',
    named(
      'remarks?|notes?|comments?|info|bemerkung(?:en)?|anmerkung(?:en)?|hinweise?|kommentar|remarques?',
      'observations?|commentaires?|observacion(?:es)?|obs|notas?|comentarios?|osservazion[ei]|commenti?|annotazioni',
    ),
  ],
  [
    'thread',
    named(
      `${THREAD}s?(?: (?:size|spec|type|callout|designation|dia|diameter))?|size|callout|designation|description|spec|hole callout|feature`,
      'gewindegrosse|grosse|nenngrosse|bezeichnung|gewindebezeichnung|gewindeart|mass|benennung',
      'dimensions?|taille|cote|designation',
      'medida|tamano|designacion|descripcion|dimension',
      'misura|dimensione|designazione|descrizione|denominazione',
    ),
  ],
  [
    'item',
    named(
      `item|line|index|tag|ref|label|balloon|row|zone|(?:item|line|hole|pos|position|feature|bohrung|loch|trou|agujero|foro) ?${NUMBER}|${NUMBER}|lfd ${NUMBER}|lfdnr`,
      'pos|position|posn|location|loc|hole|x|y|z|[xyz] (?:loc|pos|location|position|coord|mm|dim)|coordinates?',
      'lage|koordinaten?|kennung|rep|repere|ligne|n|partida|elemento|posicion|fila|posizione|riga|rif|quota',
    ),
  ],
];
