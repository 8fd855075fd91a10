import type { YamlProblem } from '../yamlProblem.js'

/** What can be wrong with YAML, in French. */
export const yamlProblems: Readonly<Record<YamlProblem, string>> = {
  tab: 'l’indentation par tabulations n’est pas permise',
  mapColumn: 'toutes les clés d’une partie doivent commencer à la même colonne',
  listColumn: 'tous les éléments d’une liste doivent commencer à la même colonne',
  mapInLine:
    'une clé avec valeur ne peut pas suivre une autre sur la même ligne ; mettre entre guillemets un texte avec deux-points',
  listAsKey: 'une liste ne peut pas être une clé',
  noColon: 'il manque un deux-points et une espace après la clé',
  keyOverLines: 'une clé doit tenir sur une seule ligne',
  noClosingQuote: 'il manque le guillemet fermant',
  noComma: 'il manque une virgule entre les éléments entre crochets ou accolades',
  noDash: 'il manque un tiret devant l’élément de la liste',
  bracketColumn: 'le crochet ou l’accolade de fin manque ou doit être plus en retrait',
  reservedSign: 'un texte ne peut pas commencer par ce signe ; le mettre entre guillemets',
  commentSpace: 'un commentaire demande une espace devant lui',
  unexpected: 'signe inattendu',
  alias: 'les ancres et alias ne sont pas permis : écrire la valeur',
  keyNotText: 'une clé doit être un texte, et non une liste, un ensemble ni un alias',
  severalDocuments: 'plus d’un document dans le texte',
}
