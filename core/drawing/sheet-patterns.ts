/** Lines of a drawing that are no callouts: the title block and the general notes. Common practice. */

const START = String.raw`^\s*(?:\(?\d{1,2}[.)]\s*)?`;

const TITLE = new RegExp(
  `${START}(?:(?:drg|dwg|drawing|draw|part|sheet|doc(?:ument)?|job|order|project|customer|assy|assembly|zeichnungs?|sach|teile?|plan|plano|disegno|dessin|pieza|pezzo|artikel)\\s*[-.]?\\s*(?:no|nr|num(?:ber|mer|ero|ero)?|n°|nº|#|name|title|id)(?![a-z])|(?:titles?|scale|drawn|dwn|drwn|checked|chkd|ckd|approved|appd?|appr|designed|date|rev(?:ision)?|sheet|material|matl|mat'l|weight|mass|projection|(?:first|third|1st|3rd)\\s+angle|size|finish|surface finish|general tol(?:erance)?s?|tolerances?|customer|company|copyright|units?|description|file)(?=\\s*(?:[:.=#]|by\\b|no\\b|\\d|$|[a-z]))|(?:titel|massstab|mass-?\\s?stab|werkstoff|benennung|gezeichnet|gez\\.|gepr(?:uft|\\.)|datum|blatt|freigabe|gewicht|allgemeintoleranz(?:en)?|oberflache)(?![a-z])|(?:titre|echelle|matiere|materiau|dessine|verifie|feuille|masse|indice)(?![a-z])|(?:titulo|escala|dibujado|comprobado|revisado|fecha|hoja|peso|denominacion)(?![a-z])|(?:titolo|scala|materiale|disegnato|controllato|data|foglio|denominazione)(?![a-z])|iso\\s*(?:2768|8015|128|13920|1101)|din\\s*(?:7168|6930)|asme\\s*y14)`,
  'i',
);

const NOTE = new RegExp(
  `${START}(?:(?:break|remove|round)\\s+(?:all\\s+)?(?:sharp|burrs?|edges?|corners?)|deburr|debur|all\\s+(?:sharp\\s+)?(?:edges?|corners?|dims?|dimensions?|radii|fillets?|burrs?|over)\\b|sharp\\s+edges|unless\\s+(?:otherwise|stated|noted)|(?:general\\s+)?notes?\\s*[:.]?\\s*$|(?:general\\s+)?notes?\\s*:|do\\s+not\\s+scale|dimensions?\\s+(?:are|in|apply)|all\\s+dimensions|clean\\s+and|inspect|interpret|mark\\s+(?:part|with)|identify|stamp|engrave|remove\\s+all|if\\s+in\\s+doubt|this\\s+drawing|confidential|proprietary|kanten|alle\\s+(?:kanten|masse)|entgraten|scharfe|unbemasste|nicht\\s+bemasste|casser\\s+les|ebavurer|aretes|sauf\\s+indication|matar\\s+(?:aristas|cantos)|desbarbar|eliminar\\s+rebabas|quitar\\s+rebabas|aristas|salvo\\s+indicacion|smussare|sbavare|spigoli|togliere\\s+(?:le\\s+)?bave|quote\\s+senza|salvo\\s+diversa)`,
  'i',
);

const folded = (line: string) => line.replace(/ß/g, 'ss').normalize('NFD').replace(/\p{M}/gu, '');

/** What a line without a callout is: of the title block, or a general note; null where it is neither known. Source: common practice; no unit. */
export function sheetLine(line: string): 'title' | 'note' | null {
  const plain = folded(line);
  if (NOTE.test(plain)) return 'note';
  return TITLE.test(plain) ? 'title' : null;
}
