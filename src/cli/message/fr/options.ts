import type { CliWords } from '../cliWords.js'

/** The meaning of each option in French. */
export const options: CliWords['options'] = {
  level:
    'error, warning ou info : les constats de ce niveau ou au-dessus donnent le code de sortie 1 (par défaut warning)',
  language: 'langue de tous les textes : de, en, es ou fr (par défaut en)',
  today: 'le jour de l’intervention (par défaut : l’horloge de cet ordinateur)',
  since: 'le premier jour (par défaut : tous les rapports)',
  until: 'le dernier jour (par défaut : tous les rapports)',
  ambient: 'température ambiante, pour l’huile et les temps d’écoulement (par défaut : non connue)',
  machine: 'identifiant du carnet, s’il y en a plusieurs',
  service:
    'faire cet entretien, à faire ou non ; peut être répété (par défaut : tous ceux à faire, même bientôt)',
  sample: 'prélever de l’huile de ce carter à sa vidange ; peut être répété',
  severity: 'quels intervalles valent, normal ou severe (par défaut : "use" du carnet, sinon normal)',
  'soon-hours': 'un entretien est à faire bientôt tant d’heures avant (par défaut 10)',
  'soon-km': 'un entretien est à faire bientôt tant de kilomètres avant (par défaut 100)',
  'soon-days': 'un entretien est à faire bientôt tant de jours avant (par défaut 14)',
  'stale-days': 'jours après lesquels un relevé est trop vieux pour « pas encore à faire » (par défaut 30)',
  edition:
    'où commence la plage d’une clé : 2017 à son repère le plus bas, 2003 à 20 % de la pleine échelle (par défaut 2017)',
  tolerance:
    'tolérance propre pour les couples que le manuel imprime sans elle (par défaut : l’erreur de la clé)',
  'raise-on':
    'stands ou ramps (par défaut : ramps seulement si l’outillage n’a pas de chandelles et que le manuel autorise les rampes)',
  'labour-rate': 'taux horaire, pour le coût de la main-d’œuvre',
  'times-from':
    'carnet ou dossier d’autres machines de cette fiche, dont les rapports montrent la durée du même travail ; peut être répété',
  out: 'dossier des fiches (créé s’il manque)',
  paper: 'visit, wall, label, chart, picks, differences ou record (par défaut visit)',
  starts:
    'début de chaque scène dans le film, pour des sous-titres en un fichier (par défaut : un fichier par scène)',
  procedure: 'procédure propre au lieu des étapes construites ; ses entretiens sont planifiés',
  to: 'l’unité, comme dans les documents ou comme on l’écrit',
  assume: 'gallons, quarts, pintes et onces liquides : us ou imperial (par défaut : une erreur)',
  sheet: 'la fiche technique des carnets ; peut être répété',
  gearcases: 'identifiants des carters de la fiche (par défaut rear)',
  variants: 'identifiants des variantes de la machine',
  unit: 'unités des exemples, une ou plusieurs : lbf.ft,qt_us,mi,degF (par défaut N.m,mL,km,degC)',
  from: 'une fiche technique à réécrire en notation courte',
  equipment:
    'quelle machine, par identifiant, numéro de série ou PIN (par défaut : le numéro de série du carnet)',
  telematics: 'édition du fichier, 2016 ou 2020 (par défaut 2020)',
  decimal: 'signe décimal des nombres d’un tableau, point ou comma (par défaut point)',
  record: 'identifiant du rapport de l’intervention (par défaut : la dernière)',
  'from-plan': 'écrire un rapport de l’intervention à faire, à compléter et corriger',
  'top-up': 'ajouter l’huile d’appoint entre deux entretiens : volume et huile ; demande --at',
  on: 'avec --top-up : date et relevés (par défaut : aujourd’hui)',
  fix: 'corriger orthographe et ordre dans fiches, outillages et stocks, et imprimer chaque changement',
  'dry-run': 'avec --fix : imprimer les changements, ne rien écrire',
  baseline: 'les constats de ce fichier sont acceptés : ni imprimés ni comptés',
  'write-baseline': 'écrire tous les constats dans ce fichier, pour les accepter',
  quiet: 'n’imprimer que les constats du niveau ou au-dessus, sans résumé',
  full: 'tout imprimer, pas seulement la réponse',
  brief:
    'imprimer une ligne de JSON par entretien : ce qui décide, ce qui reste, le terme ; --format csv a les mêmes colonnes',
  'exit-code':
    'code de sortie 3 si un entretien est à faire ou en retard, ou si une machine ne doit pas servir ; 4 si aucun ne l’est, mais que l’un ne peut être jugé ou qu’il n’y en a pas',
  every: 'l’intervalle du manuel : heures, distance, durée, ou plusieurs d’entre elles',
  last: 'date et relevés du dernier entretien, par exemple "2022-11-20 at 301.4 h, 1200 mi"',
  'from-new': 'date de première utilisation si jamais entretenu, au lieu de --last',
  now: 'date et relevés actuels (date par défaut : aujourd’hui)',
  first: 'le premier intervalle, s’il diffère',
  window: 'de combien un entretien peut tarder avant d’être en retard',
  severe: 'usage sévère : un facteur, ou un intervalle comme "100 h"',
  wrench: 'l’échelle de la clé : plage et pas entre les repères',
  accuracy:
    'erreur de la clé, en pour cent de la lecture, ou "2% of full scale" (par défaut : l’erreur admise d’ISO 6789)',
  crowfoot:
    'pour une clé crow-foot dans l’axe de la clé : distance de son carré au centre de la fixation ; demande --lever',
  lever: 'distance du carré de la clé au milieu de la poignée',
  vessel: 'le récipient : repère le plus haut et pas entre les repères',
  kv40: 'viscosité de l’huile à 40 °C en mm²/s (cSt), de sa fiche de données',
  kv100: 'la même à 100 °C',
  at: 'température de l’huile',
  hose: 'diamètre intérieur et longueur du tuyau',
  drop: 'hauteur du fond de l’entonnoir au-dessus du bas du tuyau (par défaut : le tuyau pend droit)',
  funnel:
    'diamètre supérieur et profondeur de l’entonnoir ; un cône sauf si le texte commence par "cylinder"',
  manual: 'l’huile que le manuel autorise',
  'yellow-metal': 'si l’huile touche du bronze ou du laiton (par défaut : non connu)',
  additive: 'si l’étiquette nomme un additif pour glissement limité (par défaut : non connu)',
  thread: 'le filetage du bouchon',
}
