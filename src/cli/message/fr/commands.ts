import type { CliWords } from '../cliWords.js'

const FINDINGS_EXIT_CODES =
  '0 aucun constat du niveau ou au-dessus, 1 constats, 2 mauvais emploi ou fichier illisible.'
const ANSWER_EXIT_CODES = '0 oui, 1 non ou non connu, 2 mauvais emploi.'
const TODAY = '(par défaut : l’horloge de cet ordinateur)'

/** The help of each command in French. */
export const commands: CliWords['commands'] = {
  new: {
    summary: 'écrire une fiche technique, un carnet, un outillage ou un stock à remplir',
    help: `Écrit un document à remplir, en YAML avec un exemple pour chaque valeur. Même non rempli, il n’a pas d’erreur et peut servir à un plan :
les valeurs qui manquent sont "not stated". Nommer la fiche d’un carnet avec --sheet. Avec --from, réécrit une fiche complète en notation
courte. Une fiche peut être un tableau, une ligne par carter et ouverture : --format csv ou --out sheet.csv l’écrit, --from sheet.csv la
lit.`,
    options: {
      sheet: 'la fiche technique du carnet',
      out: 'fichier à écrire, .yaml, .json ou .csv ; un fichier existant n’est pas remplacé (par défaut : sortie standard)',
    },
    exitCodes: '0 écrit, 1 la fiche donnée a des erreurs, 2 mauvais emploi, ou le fichier existe.',
  },
  check: {
    summary: 'signaler les erreurs dans des documents',
    help: `Lit des documents et imprime un constat pour chaque erreur. Les sous-dossiers sont lus aussi, chacun comme un lot à part ; pas les dossiers
cachés, les liens ni node_modules. Les dernières lignes donnent le nombre de documents et de dossiers lus et ignorés (sur la sortie
d’erreur avec --format json ou sarif). Une erreur dans trois fichiers ou plus est imprimée une fois, avec ses fichiers.
Avec --fix, corrige l’orthographe des clés, des noms et des valeurs et l’ordre de deux valeurs, où un seul changement est probable et où
aucun nouveau constat n’apparaît. Carnets, rapports et procédures ne sont jamais changés. Comparer chaque changement au manuel.
Avec --write-baseline, accepte tous les constats du jour ; avec --baseline, ne signale ensuite que les nouveaux.`,
    options: { today: `signale les relevés et rapports après ce jour ${TODAY}` },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  due: {
    summary: 'lister les entretiens à faire, avec les raisons',
    help: `Imprime chaque entretien de chaque machine avec son verdict et ses raisons. Avec --every, aucun document n’est nécessaire : dit si un
entretien est à faire, d’après l’intervalle du manuel et les relevés au dernier entretien et maintenant.

Pour les parcs : JSON Lines d’un fichier ou de l’entrée standard (-), un carnet par ligne. Imprime une ligne de JSON pour chaque ligne, à
mémoire constante. Pour une ligne illisible, imprime des constats et continue ; le code de sortie est alors 1. Avec --brief ou
--format csv, une ligne courte par entretien, avec --format summary seulement le nombre de machines par jour et par lieu.
Sans fiche technique, chaque ligne est un enregistrement plat, un entretien avec ses limites :
  {"id":"m-1","lastDate":"2023-04-06","lastHours":310,"hours":402,"hoursDate":"2023-10-01","everyHours":100,"everyMonths":6}
Un champ mal écrit donne un constat et le verdict "cannot tell" ; les autres colonnes sont ignorées et listées à la fin.`,
    exitCodes: `0 chaque document et chaque ligne a été lu, 1 constats, 2 mauvais emploi ou fichier illisible ;
avec --exit-code, 3 ou 4 au lieu de 0. Avec --every : 0 pas à faire, 1 à faire ou non connu ; avec --exit-code, 3 ou 4 au lieu de 1.`,
  },
  plan: {
    summary:
      'planifier une intervention : à faire, huile, joints à acheter, réglages, ce qui manque ; avec --full toutes les valeurs et étapes',
    help: `Planifie une intervention sur une machine et imprime la réponse : ce qui est à faire, huile, réglages, ce qui manque. Avec --full, imprime
le plan entier. Demande un carnet avec sa fiche technique ; outillage et stock sont facultatifs.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  card: {
    summary: 'écrire le plan comme fiche dans --out : HTML, Markdown, texte et une fiche courte',
    help: `Écrit l’intervention comme fiche : <machine>.html, <machine>.md, <machine>.txt et <machine>-short.html.
Avec --paper wall, écrit une fiche murale sans date, <sheet>-<variant>-wall.html et .md, pour chaque variante de chaque fiche technique
parmi les fichiers, ou avec --machine pour la machine de ce carnet. Un outillage donne les réglages, un stock la viscosité de ses huiles.
Les autres papiers ont une page, en HTML, Markdown et texte : l’étiquette du prochain entretien (62 x 29 mm, dans les deux sens) et le
plan de graissage de chaque machine, le rapport vierge de son intervention, la liste de préparation de toutes les machines du jour, et
les différences entre les variantes de chaque fiche technique.`,
    exitCodes: FINDINGS_EXIT_CODES,
  },
  cues: {
    summary: 'imprimer le conducteur d’une intervention pour qui la présente, ou l’écrire avec sous-titres',
    help: `Imprime un script, scène par scène : quoi montrer, quoi dire et quoi afficher. Puis il liste les plans dans l’ordre du tournage. Avec
--out, écrit <machine>-cues.html, .md et .txt, et des sous-titres WebVTT : un fichier avec --starts, sinon un par scène.`,
    options: { out: 'dossier du conducteur et des sous-titres (créé s’il manque)' },
  },
  kits: {
    summary:
      'lister huile, joints et outils par machine avec un entretien à faire, et une commande pour toutes',
    help: `Imprime l’huile, les joints et les outils pour chaque machine avec un entretien à faire, et la liste de commande : huile dans les bidons du
stock (un nombre 0 indique une taille en vente), avec ce qui reste ; pas de réserve. Avec plusieurs jours ou véhicules, les deux aussi par
jour (où le premier entretien est à faire) et par véhicule (l’outillage, sinon le stock ou le dossier). Demande des carnets et leurs
fiches techniques.`,
  },
  procedure: {
    summary:
      'écrire les étapes d’une intervention, à modifier et à utiliser dans plan, card et cues avec --procedure',
    help: `Écrit les étapes construites en YAML, avec chaque ligne de la fiche en commentaire au-dessus de ses étapes. Demande un carnet avec sa fiche
technique, ou une fiche et --service. Avec --from, met une procédure plus ancienne à jour de la révision de la fiche : son ordre, ses
identifiants et ses notes restent, et seules les erreurs sont corrigées. Liste les étapes retirées, ajoutées et déplacées, les notes
sans étape et, si la révision plus ancienne de la fiche est parmi les fichiers, les valeurs changées.`,
    options: {
      out: 'fichier à écrire, .yaml ou .json ; un fichier existant n’est pas remplacé (par défaut : sortie standard)',
      from: 'procédure plus ancienne à mettre à jour de la révision de la fiche',
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  repair: {
    summary: 'corriger une procédure, erreurs dangereuses d’abord',
    help: `Corrige une procédure avec le moins de changements, ou la reconstruit dans l’ordre usuel s’il y a trop d’erreurs ; notes et autres étapes
restent. Imprime d’abord les erreurs dangereuses, puis les autres, chaque changement avec les étapes voisines, et les erreurs qui restent.
Avec --out, écrit aussi la procédure corrigée.`,
    options: { out: 'fichier de la procédure corrigée' },
  },
  compare: {
    summary: 'comparer deux fiches techniques, deux procédures, ou les variantes d’une fiche',
    help: `Compare deux fiches techniques valeur par valeur, deux procédures par leur effet, ou les variantes d’une fiche.
Le code de sortie est 1 si elles diffèrent.`,
  },
  record: {
    summary: 'ajouter un rapport d’entretien à son carnet',
    help: `Ajoute un rapport du travail fait, erreurs comprises, au carnet de sa machine, et écrit le carnet dans --out ; sans --out, contrôle
seulement. Signale les erreurs, le travail qui ne compte pas comme fait et les défauts en cours : ne pas utiliser la machine avant qu’un
rapport avec "corrects" ne les ferme. Ne refuse qu’un rapport illisible ou d’une autre machine. --from-plan écrit un rapport de
l’intervention planifiée : remplacer chaque ?, et corriger les entrées qui diffèrent du travail. --top-up ajoute l’huile d’appoint entre
deux entretiens, et imprime combien d’huile perd le carter.`,
    options: {
      out: 'fichier du carnet avec le nouveau rapport ou appoint, ou du rapport d’un plan',
      at: 'avec --top-up : identifiant du carter, par exemple front ou "hub left"',
      service: 'avec --from-plan : inclure cet entretien, à faire ou non ; peut être répété',
      ambient: 'avec --from-plan : température ambiante, pour le choix de l’huile',
      today: `signale un rapport après ce jour ${TODAY}`,
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  history: {
    summary:
      'imprimer rapports et appoints d’une machine, avec corrections, défauts en cours et huile perdue',
    help: `Imprime les défauts en cours et les carters qui perdent de l’huile, puis chaque rapport du carnet avec son travail, le travail qui ne
compte pas (et pourquoi) et les corrections, puis les appoints. Avec --format csv, imprime les relevés en tableau, que lit import.`,
    options: { today: `signale un rapport après ce jour ${TODAY}` },
  },
  slip: {
    summary:
      'écrire le bon pour le propriétaire après une intervention : défauts, travail, constats, prochains entretiens',
    help: `Imprime une page pour le propriétaire : défauts en cours, puis travail fait, constats, travail non fait, prochain terme de chaque
entretien, et prélèvements d’huile sans résultat. Les corrections sont appliquées. Un rapport parmi les fichiers qui n’est pas encore
dans le carnet est inclus.`,
    options: {
      out: 'fichier à écrire, .txt, .md, .html ou .json (par défaut : sortie standard)',
      today: `le jour où les prochains entretiens sont jugés ${TODAY}`,
    },
    exitCodes:
      '0 imprimé, même avec des défauts en cours, 1 un document a des erreurs, 2 mauvais emploi ou fichier illisible.',
  },
  'used-oil': {
    summary: 'additionner l’huile usagée remise, par destinataire',
    help: `Imprime l’huile usagée de tous les rapports en litres : le total, par destinataire, et ligne par ligne. L’huile gardée à part, l’huile sans
reçu et les lignes sans volume sont marquées ; pour les lignes sans volume, l’huile vidangée est montrée, mais pas additionnée.`,
  },
  import: {
    summary: 'ajouter des relevés de télématique (ISO/TS 15143-3) ou de tableaux (CSV) à des carnets',
    help: `Ajoute les heures et distances d’un constructeur (JSON selon ISO/TS 15143-3) à un carnet, un relevé par jour. Les jours qui ont déjà un
relevé sont ignorés ; un compteur qui manque est ajouté. Sans --out, n’imprime que le nombre de nouveaux relevés. Pour un parc, plusieurs
fichiers (pages) et tableaux vont dans de nombreux carnets, trouvés par identifiant, numéro de série ou PIN, et écrits dans le dossier
--out. Un tableau a sur chaque ligne une machine et un jour, en colonnes machine, date, hours et distance [km] ; l’unité est dans le nom
de la colonne ou dans une seconde ligne d’en-tête. Une machine sans carnet en reçoit un si le tableau a une colonne sheet (aussi revision,
name, variant, serial, commissioned). Une colonne entry, en notation courte, ajoute des rapports. Avec une mauvaise case, rien n’est
écrit.`,
    options: {
      out: 'fichier du carnet avec les relevés ; pour un parc, dossier des carnets',
      today: `signale les relevés après ce jour ${TODAY}`,
    },
    exitCodes: FINDINGS_EXIT_CODES,
  },
  convert: {
    summary: 'convertir une grandeur dans une autre unité, correctement arrondie',
    help: `Lit une grandeur, une tolérance ou une plage comme on l’écrit, et l’imprime dans une autre unité : le nombre correctement arrondi, et la
valeur à imprimer à côté de l’originale (les limites sont arrondies vers l’intérieur). Un texte ambigu est une erreur qui liste ses sens
possibles.`,
  },
  torque: {
    summary: 'trouver le réglage d’une clé dynamométrique et le couple réel',
    help: 'Imprime le repère à régler sur cette clé, le couple réel avec l’erreur de la clé, et les raisons.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  fill: {
    summary: 'trouver les repères d’un récipient gradué pour un remplissage',
    help: 'Imprime combien de fois verser, le repère de chaque fois, et l’erreur.',
    options: {
      tolerance:
        'erreur admise du remplissage en pour cent (par défaut : la tolérance de la grandeur, s’il y en a une)',
    },
    exitCodes: ANSWER_EXIT_CODES,
  },
  pour: {
    summary: 'trouver combien de temps l’huile met à passer par un entonnoir et un tuyau',
    help: `Imprime combien de temps le remplissage met à couler. Le grade d’une huile ne donne pas sa viscosité à froid : prendre les deux viscosités
de sa fiche de données.`,
    exitCodes: ANSWER_EXIT_CODES,
  },
  meets: {
    summary: 'trouver si une huile répond aux exigences du manuel',
    help: 'Imprime si le manuel autorise une huile, selon son étiquette. Écrire une huile à deux catégories comme "80W-90 GL-4/GL-5".',
    options: {
      ambient: 'température ambiante, si le manuel limite l’huile à une plage (par défaut : non connue)',
    },
    exitCodes: '0 oui, 1 non, non connu, ou demander au constructeur, 2 mauvais emploi.',
  },
  washer: {
    summary: 'trouver si une rondelle va sur le filetage d’un bouchon',
    help: 'Compare le diamètre intérieur, le diamètre extérieur et l’épaisseur d’une rondelle à écraser avec le filetage.',
    exitCodes: ANSWER_EXIT_CODES,
  },
  schema: {
    summary: 'imprimer le JSON Schema d’une sorte de document ou de résultat',
    help: `Imprime le JSON Schema d’un document : spec-sheet, machine-log, toolbox, stock, procedure ou service-record ; ou d’un résultat :
visit-plan, due-line, service-card ou finding.`,
  },
  completion: {
    summary: 'imprimer un script de complétion pour bash, zsh ou fish',
    help: `Imprime un script qui complète commandes, options et fichiers. Le charger depuis le fichier de démarrage du shell :
  bash: source <(drivetrain-service completion bash)
  zsh:  source <(drivetrain-service completion zsh)
  fish: drivetrain-service completion fish | source`,
  },
}
