import type { BlankWords } from '../blankWords.js'
import { joinOr } from './count.js'

/** Comments of documents to fill in, in French. */
export const blanks: BlankWords = {
  fillIn:
    'Pour remplir une partie, supprimer son {} ou [] et le # devant les lignes au-dessous, puis écrire les valeurs.',
  log: 'Carnet : données, relevés et entretiens d’une machine.',
  firstDay: 'Premier jour d’utilisation.',
  plate: 'Selon sa plaque.',
  plateOrVariant: ({ variants }) => `Selon sa plaque, ou sa variante : ${joinOr(variants)}.`,
  readings:
    'Relevés du compteur horaire, du compteur kilométrique ou des deux. Le dernier est l’état actuel.',
  services: 'Entretiens faits : date, relevés et travail.',
  sheet:
    'Fiche technique. Remplacer "not stated" par ce que le manuel imprime, dans ses unités, comme les exemples après #.',
  leaveNotStated: 'Laisser "not stated" où le manuel n’indique rien. Autres formes :',
  brackets:
    'Parenthèses : la valeur dans une autre unité. Crochets : sa page. "source" : la page d’une partie entière.',
  levelHole: ({ fill }) =>
    `Si l’orifice de remplissage fixe le niveau : "uses: fill, level" pour ce bouchon, et "fill: ${fill}, to level hole".`,
  severalVariants: 'Pour une machine à plusieurs variantes, commencer par : new --variants short,long',
  or: 'ou',
  differing:
    'Valeurs qui diffèrent dans une variante : le chemin de la valeur dans cette fiche, et la valeur.',
  stock: 'Stock : huile et joints en rayon. Un plan y puise et liste ce qu’il faut acheter.',
  containers: 'Bidons, avec grade et catégories de l’étiquette ; "opened" est le reste d’un bidon ouvert.',
  containerData: 'Le nom et les données d’une huile vont sous "oil" :',
  seals: 'Joints.',
  toolbox: 'Outillage : les outils de l’atelier. Un plan les contrôle et donne le réglage de chaque clé.',
  wrenches: 'Clés dynamométriques : échelle comme marquée, type et carré.',
  wrenchAccuracy:
    'L’exactitude est celle d’ISO 6789, sauf si celle du constructeur est ajoutée : "4 % of reading".',
  sockets: 'Clés, douilles et embouts, avec leur carré s’ils en ont un.',
  vessels: 'Récipients et bouteilles gradués : repère le plus haut, et pas entre les repères.',
  pans: 'Bacs de vidange.',
  fillers: 'Entonnoirs avec tuyau.',
  stands: 'Chandelles, avec la charge nominale d’une seule.',
  ramps: 'Rampes pour roues, et la charge nominale d’une seule.',
}
