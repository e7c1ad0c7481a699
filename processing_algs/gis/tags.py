"""Words by which the search of the toolbox finds a tool, in five languages whatever language QGIS speaks.

A word lists its Spanish, French, German and Portuguese, and others that mean the same; a tool lists its words. The
search takes a part of a word for the word, in any case, but tells accents apart: words with accents stand twice.
"""

import unicodedata

WORDS = {
    "angle": "ángulo|angle|Winkel|ângulo",
    "apparent dip": "buzamiento aparente|pendage apparent|scheinbares Einfallen|mergulho aparente",
    "archive": "archivo|archive|Archiv|arquivo",
    "attitude": "orientación|orientation|Raumlage|atitude|actitud|medidas estructurales|mesures structurales",
    "axis": "eje|axe|Achse|eixo",
    "azimuth": "acimut|azimut|Azimut|azimute|rumbo|cap|Richtung",
    "bearing": "rumbo|marcación|relèvement|gisement|Peilung|visada|visée|sight",
    "bedding": "estratificación|stratification|Schichtung|acamamento|estratos|couches|Schichten|camadas",
    "blunder": "error grosero|erreur grossière|faute|grober Fehler|erro grosseiro|mistake|outlier|quality control",
    "borehole": "sondeo|perforación|sondage|forage|Bohrung|Bohrloch|sondagem|furo|drillhole|drilling|well",
    "calculate": "calcular|calculer|berechnen",
    "circular statistics": "estadística circular|statistique circulaire|Kreisstatistik|estatística circular",
    "compass": "brújula|boussole|Kompass|bússola",
    "contact": "contacto|contact|Kontakt|contato|contour geológico",
    "contour": "isolínea|isoligne|Isolinie|isolinha|curva",
    "convergence": "convergencia|convergence|Meridiankonvergenz|convergência|grid north|norte de cuadrícula|Gitternord",
    "convert": "convertir|umrechnen|converter",
    "cross section": "corte geológico|perfil geológico|coupe géologique|Profilschnitt|Querschnitt|seção geológica",
    "date": "fecha|date|Datum|data",
    "declination": "declinación|déclinaison|Deklination|Missweisung|declinação",
    "depth": "profundidad|profondeur|Tiefe|profundidade",
    "dip": "buzamiento|pendage|Einfallen|Fallen|mergulho|inclinación|inclinaison|inclinação",
    "domain": "dominio|domaine|Bereich|domínio",
    "draft": "borrador|ébauche|Entwurf|rascunho|construction|construcción|balanced",
    "elevation": "elevación|altitude|Höhe|DEM|MDT|MNT|DGM|MDE|terrain",
    "error": "error|erreur|Fehler|erro|uncertainty|incertidumbre|incertitude|Unsicherheit|incerteza",
    "exchange": "intercambio|échange|Austausch|intercâmbio|export|exportar|exporter|exportieren",
    "explanation": "explicación|explication|Erläuterung|explicação",
    "fault": "falla|faille|Störung|Verwerfung|falha",
    "field book": "libreta de campo|carnet de terrain|Feldbuch|caderneta de campo|notebook|CSV|spreadsheet",
    "figure": "figura|figure|Abbildung",
    "fold": "pliegue|pli|Falte|dobra",
    "form": "formulario|formulaire|Formular|formulário|blank|print|imprimir|imprimer|drucken",
    "geology": "geología|géologie|Geologie|geologia",
    "grade": "pendiente|pente|Gefälle|Steigung|rampa|slope|declive",
    "great circle": "círculo máximo|grand cercle|Grosskreis|Großkreis",
    "grid": "cuadrícula|quadrillage|Gitter|quadrícula",
    "hillshade": "sombreado|ombrage|Schummerung|sombreamento",
    "import": "importar|importer|importieren",
    "intersection": "intersección|intersection|Schnitt|interseção",
    "isogonic": "isógona|isogone|Isogone",
    "joint": "diaclasa|diaclase|Kluft|diáclase|fracture|fractura",
    "kinematics": "cinemática|cinématique|Kinematik|slickenline|estría|strie|Harnisch|estria",
    "layout": "composición|mise en page|Drucklayout|leiaute",
    "legend": "leyenda|légende|Legende|legenda",
    "lineament": "lineamiento|linéament|Lineament|lineamento",
    "lineation": "lineación|linéation|Lineation|Lineare|lineação",
    "local attraction": "atracción local|attraction locale|örtliche Ablenkung|atração local|iron|hierro|fer|Eisen",
    "magnetic": "magnético|magnétique|magnetisch",
    "magnetic model": "modelo magnético|modèle magnétique|Magnetfeldmodell|IGRF|WMM",
    "map": "mapa|carte|Karte",
    "mean": "media|moyenne|Mittelwert|média|average|promedio|durchschnitt",
    "methods": "métodos|méthodes|Methoden|report|informe|rapport|Bericht|relatório",
    "net": "red estereográfica|falsilla|canevas|Schmidt-Netz|Lagenkugel|rede estereográfica|stereographic|equal area",
    "north": "norte|nord|Nord|true north",
    "notation": "notación|notation|Schreibweise|notação",
    "outcrop": "afloramiento|affleurement|Aufschluss|Ausbiss|afloramento",
    "overturned": "invertido|renversé|überkippt",
    "pattern": "trama|figuré|Signatur|textura|colour|color|couleur|Farbe|cor",
    "plane": "plano|plan|Ebene|Fläche",
    "plunge": "inmersión|plongement|Abtauchen|caimento",
    "pole": "polo|pôle|Pol",
    "position": "posición|position|Standort|posição|GPS|coordinates|coordenadas|coordonnées|Koordinaten",
    "print": "imprimir|imprimer|drucken|PDF",
    "profile": "perfil|profil|Profil",
    "project": "proyectar|projeter|projizieren|projetar",
    "rake": "cabeceo|pitch|obliquidade",
    "resection": "intersección inversa|resección|relèvement|recoupement|Rückwärtsschnitt|triangulation|ressecção",
    "rose": "roseta|rosa|rosace|Kluftrose|Rosendiagramm",
    "scale": "escala|échelle|Massstab|Maßstab",
    "sheet": "hoja|feuille|Kartenblatt|folha",
    "slip": "deslizamiento|glissement|Versatz|deslizamento|displacement|salto|rejet|rejeito",
    "statistics": "estadística|statistique|Statistik|estatística",
    "strike": "rumbo|dirección|direction|Streichen|direção",
    "structure": "estructura|structure|Struktur|estrutura|estructural|structural|Tektonik",
    "structure contour": "curva estructural|isohipsa|isohypse|Streichlinie|contorno estrutural",
    "style": "estilo|style|Stil",
    "sun": "sol|soleil|Sonne|astronomic|sun compass|brújula solar",
    "symbol": "símbolo|symbole|Symbol",
    "terrain": "terreno|terrain|Gelände|topography",
    "thickness": "espesor|potencia|épaisseur|puissance|Mächtigkeit|espessura",
    "thin": "generalizar|entresacar|généraliser|ausdünnen|declutter|generalise",
    "three-point problem": "problema de tres puntos|problème des trois points|Dreipunktproblem|problema de três pontos",
    "trace": "traza|trace|Ausstrichlinie|traço",
    "traverse": "poligonal|itinerario|cheminement|Polygonzug|caminhamento|survey|mine|mina|cave",
    "unit": "unidad|unité|Einheit|unidade|formation|formación",
    "vertical angle": "ángulo vertical|angle vertical|Höhenwinkel|Vertikalwinkel|ângulo vertical|clinometer|clinómetro",
    "visibility": "visibilidad|visibilité|Sichtbarkeit|visibilidade|line of sight",
}  # one a line, sorted

COMMON = ("geology", "structure")
TOOLS = {
    "blank_fieldbook": "field book, form, declination, magnetic, compass, strike, dip, grid, print",
    "check_compass": "compass, magnetic, bearing, azimuth, declination, error, local attraction, north",
    "check_readings": "blunder, error, strike, dip, azimuth, magnetic, declination, attitude, compass",
    "combine_attitudes": "plane, apparent dip, lineation, intersection, strike, dip, axis, rake, plunge, fold",
    "convert_notation": "notation, convert, strike, dip, azimuth, attitude, lineation, rake",
    "correct_readings": "declination, magnetic, compass, strike, dip, azimuth, convergence, north, attitude, "
    "lineation, bearing, plunge, rake, magnetic model, date, bedding, joint",
    "depth_to_plane": "depth, plane, borehole, strike, dip, terrain, elevation",
    "draft_section": "cross section, draft, profile, depth, fold, fault, dip, apparent dip, bedding",
    "draw_section": "cross section, profile, figure, apparent dip, fault, unit, legend, print, contact, borehole",
    "export_attitudes": "exchange, attitude, strike, dip, lineation, notation, convert, archive",
    "export_gems": "exchange, archive, map, unit, fault",
    "export_geosciml": "exchange, archive, map, unit, fault",
    "fault_slip": "fault, slip, kinematics, rake, lineation, statistics",
    "fold_axis": "fold, axis, great circle, pole, statistics, bedding, plunge",
    "import_gems": "import, exchange, archive, map",
    "isogonic_lines": "isogonic, declination, magnetic, contour, magnetic model, north",
    "local_attraction": "local attraction, compass, magnetic, bearing, declination, traverse",
    "locate_by_bearings": "resection, intersection, bearing, azimuth, position, compass, magnetic, north",
    "map_sheet": "sheet, map, layout, legend, explanation, scale, print, declination, north, hillshade",
    "mean_orientations": "mean, statistics, circular statistics, pole, lineation, joint, bedding, attitude",
    "methods_statement": "methods, archive, error",
    "north_angles": "declination, convergence, north, magnetic, magnetic model, grid, date, angle, calculate",
    "north_diagram": "north, declination, convergence, magnetic, figure, map, legend, sheet, grid",
    "orientation_net": "net, pole, great circle, statistics, joint, fold, lineation, figure, contour",
    "outcrop_trace": "outcrop, trace, plane, contact, terrain, elevation, intersection, strike, dip",
    "plan_boreholes": "borehole, depth, plane, angle, terrain, dip",
    "planes_along_traces": "plane, trace, contact, strike, dip, terrain, elevation, attitude, outcrop, fault",
    "planes_from_points": "three-point problem, plane, strike, dip, terrain, elevation, borehole, attitude, contact",
    "project_to_section": "cross section, project, profile, borehole, plunge, axis",
    "read_fieldbook": "field book, import, strike, dip, azimuth, declination, magnetic, compass, position, notation",
    "reduce_traverse": "traverse, compass, magnetic, bearing, azimuth, local attraction, declination, error, position",
    "rose_diagram": "rose, joint, lineament, statistics, circular statistics, figure, strike, azimuth",
    "section_attitudes": "cross section, apparent dip, dip, strike, profile, project",
    "section_crossings": "cross section, contact, fault, unit, intersection, profile",
    "section_fence": "cross section, profile, figure, unit, terrain",
    "section_profile": "cross section, profile, elevation, terrain",
    "sight_grade": "grade, vertical angle, bearing, terrain, elevation, azimuth, compass",
    "sight_to_terrain": "bearing, vertical angle, terrain, elevation, visibility, azimuth, compass, magnetic, position",
    "structural_domains": "domain, fold, axis, statistics, bedding",
    "structure_contours": "structure contour, contour, plane, depth, strike, dip",
    "style_attitudes": "symbol, style, strike, dip, lineation, map, bedding, overturned, legend, joint",
    "style_lines": "symbol, style, contact, fault, fold, legend, map",
    "style_units": "unit, style, pattern, legend, map",
    "sun_azimuths": "sun, azimuth, bearing, compass, declination, local attraction, north, calculate",
    "symbol_sheet": "legend, explanation, symbol, strike, dip, fault, print",
    "thin_attitudes": "thin, symbol, scale, map, strike, dip",
    "true_thickness": "thickness, unit, strike, dip, depth, elevation",
}  # one a line, sorted


def tags_of(tool):
    """Words that find a tool.

    Parameters
    ----------
    tool : str
        Its id without that of the provider.

    Returns
    -------
    list of str
        Each once, sorted.
    """
    words = [*COMMON, *TOOLS.get(tool, "").split(", ")] if tool in TOOLS else []
    found = {*words, *(other for word in words for other in WORDS[word].split("|"))}
    return sorted(found | {_plain(word) for word in found})


def _plain(word):
    """The word without its accents, as many type it."""
    parts = unicodedata.normalize("NFD", word.replace("ß", "ss"))
    return "".join(letter for letter in parts if not unicodedata.combining(letter))
