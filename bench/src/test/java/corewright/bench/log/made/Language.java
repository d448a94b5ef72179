package corewright.bench.log.made;

/** How an export names its columns, and which decimal mark its country has. */
public enum Language {
  ENGLISH('.', "Time", "Engine Speed", "Battery Voltage", "Boost V", "Fuel quantity", "rpm"),
  ENGLISH_SHORT('.', "t", "RPM", "BAT+", "Inj driver volt", "Inj qty", "rpm"),
  ENGLISH_MODULE('.', "Elapsed", "Eng Spd", "Module supply", "HV supply", "Fuel rate", "1/min"),
  GERMAN(
      ',',
      "Zeit",
      "Motordrehzahl",
      "Batteriespannung",
      "Boost-Spannung",
      "Einspritzmenge",
      "1/min"),
  GERMAN_SHORT(',', "Zeit", "n", "Ubat", "Hochspannung Injektoren", "Kraftstoffmenge", "U/min"),
  FRENCH(
      ',',
      "Temps",
      "Régime moteur",
      "Tension batterie",
      "Tension injecteurs",
      "Débit injecté",
      "tr/min"),
  SPANISH(
      ',',
      "Tiempo",
      "Revoluciones motor",
      "Tensión de batería",
      "Voltaje de inyectores",
      "Cantidad inyectada",
      "rpm"),
  ITALIAN(
      ',',
      "Tempo",
      "Regime motore",
      "Tensione batteria",
      "Tensione iniettori",
      "Quantità iniettata",
      "giri/min"),
  DUTCH(
      ',',
      "Tijd",
      "Motortoerental",
      "Accuspanning",
      "Spanning injectoren",
      "Inspuithoeveelheid",
      "omw/min"),
  POLISH(
      ',',
      "Czas",
      "Prędkość obrotowa silnika",
      "Napięcie akumulatora",
      "Napięcie wtryskiwaczy",
      "Dawka paliwa",
      "obr/min"),
  SWEDISH(
      ',',
      "Tid",
      "Motorvarvtal",
      "Batterispänning",
      "Spänning spridare",
      "Insprutningsmängd",
      "varv/min");

  final char decimal;
  final String time;
  final String speed;
  final String supply;
  final String output;
  final String fuel;
  final String perMinute;

  Language(
      char decimal,
      String time,
      String speed,
      String supply,
      String output,
      String fuel,
      String perMinute) {
    this.decimal = decimal;
    this.time = time;
    this.speed = speed;
    this.supply = supply;
    this.output = output;
    this.fuel = fuel;
    this.perMinute = perMinute;
  }
}
