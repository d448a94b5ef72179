package corewright.bench.log.table;

/**
 * How columns are called: English, German, French, Spanish, Italian, Dutch, Polish, Swedish,
 * Danish, Norwegian, Portuguese, Czech, Hungarian, Finnish, Romanian, Turkish, Russian. To add a
 * name: one word in its line; nothing else changes. Common words of these languages, no source.
 */
final class Vocabulary {
  private Vocabulary() {}

  static final Words TIME =
      Words.of(
          "time timestamp time# elapsed clock datetime t ts zeit zeitstempel uhrzeit zeitpunkt",
          "temps heure horodatage ecoule tiempo hora transcurrido tempo ora orario trascorso tijd",
          "tijdstip tijdstempel verstreken czas godzina tid klockslag tidpunkt tidspunkt aika"
              + " kello",
          "cas ido idopont timp zaman saat время времени tempos decorrido tidsstempel log ms sec",
          "seconds second secs s date datum fecha data local abs absolute relative rel absolut",
          "laufende messzeit logzeit log* messung since begin of in from start record*"
              + " aufzeichnung",
          "system pc del de la du des de+la und and stamp recorded sample");

  /** Of those, what makes a name a time at all. */
  static final Words TIME_CORE =
      Words.of(
          "time timestamp elapsed datetime t ts *zeit* temps heure horodatage ecoule tiempo hora",
          "tempo ora orario tijd* verstreken czas godzina tid tidpunkt tidspunkt tidsstempel aika",
          "kello cas ido idopont timp zaman saat время clock klockslag time# *timestamp*",
          "seconds secs sec sek millis msec ms");

  static final Words DATE = Words.of("date datum fecha data dato datetime *datum* *date*");

  static final Words NOT_TIME =
      Words.of(
          "inj* injection *einspritz* *offnung* *oeffnung* dwell pulse glow",
          "gluh* response delay gps idle advance *zundzeit*",
          "iniezione inyeccion wtrysku insprutning*");

  /** Mostly the engine's own; now and then what a tool calls its stop watch. */
  static final Words PERHAPS_TIME =
      Words.of("run running runtime *laufzeit* *betriebszeit* duration *dauer* *duree* *duracion*");

  static final Words FRAME =
      Words.of(
          "frame frames frameno index idx sample samples row record recordno sampleno no nr num",
          "number # n° zeile bild lfd lfdnr *laufendenummer* trame cuadro muestra fila campione",
          "riga klatka ramka probka wiersz rad ruta punkt point pt seq sequence satz datensatz",
          "ligne echantillon monster regel raekke rivi radek sor кадр");

  static final Words SPEED =
      Words.of(
          "rpm *enginespeed* *engspeed* *engspd* *enginerpm* *crankspeed* *crankshaftspeed* nmot",
          "*drehzahl* *motordreh* *regimemot* regime *vitessemoteur* *rotationmoteur* revoluciones",
          "*velocidadmotor* *velocidaddelmotor* *revolucionesdelmotor* giri *regimemotore*",
          "*velocitamotore* *numerodigiri* *toerental* toeren *obroty* *obrotowa*"
              + " *predkoscsilnika*",
          "*varvtal* varv *omdrejning* *omdreining* turtall* *motorhastighed* *rotacao* rotacoes",
          "*rotacaodomotor* *otacky* *fordulatszam* *kierros* *pyorintanopeus* *turatie* *turatia*",
          "devir *motordevri* *обороты* *частотавращения* *engrpm* *motorspeed* *motorrpm*");

  static final Words NOT_ENGINE =
      Words.of(
          "turbo* *turbine* fan lufter* luefter* *ventil* desired target soll consigne objetivo"
              + " trans*",
          "*getriebe* gear input output wheel rad pump* *pumpe* vehicle fahrzeug idle *leerlauf*",
          "max min alternator generator compressor setpoint nominal obiettivo deseada");

  static final Words VOLT =
      Words.of(
          "v volt* voltage *spannung* tension tensione tensao *spanning* *spaending* *spenning*",
          "*napiecie* napeti *feszultseg* tensiune *jannite* gerilim* voltaj* voltaggio *voltage*",
          "*volt* u ub *напряжение* potential");

  static final Words SUPPLY =
      Words.of(
          "bat bat+ batt b+ batt+ vbat vbatt ubat ubatt ub *batter* *bateri* *batteri* *akku*"
              + " accu*",
          "*akumulator* accumul* *аккум* акб acumulador ign ignition *zundung* *zuendung*",
          "*allumage* contact kontakt contatto encendido contacto kl15 kl30 *klemme* *borne*"
              + " *supply*",
          "*versorgung* alimentation alimentazione alimentacion alimentare *voeding* *zasilani*",
          "*matning* *forsyning* *napajeni* *tapfesz* *syotto* besleme *питани* *bordnetz*",
          "*controlmodule* *steuergerat* *calculateur* *centralin* *centralita* *regeleenheid*",
          "*sterownik* *styrenhet* *styreenhed* ecu* ecm* pcm vcc vsup vsupp vsupply usup system",
          "charging alternator generator *lichtmaschine* *alternat* main logic power vehicle"
              + " switched",
          "relay *relais* vin uin *input* eingang* entree entrada ingresso *ingang* wejscie",
          "ingang* inngang obd dlc adapter dongle feed *netz* *alimenta* rede rete naped*",
          "bordnet reseau *puissance* kracht *module* *modul*");

  /** What feeds the output's own side: words that a supply is never called by itself. */
  static final Words OUTPUT =
      Words.of(
          "*boost* *booster* hv *highvoltage* *hochspannung* *hautetension* *altatension*",
          "*altatensione* *altatensao* *hoogspanning* *wysokienapiecie* *hogspanning*"
              + " *hojspaending*",
          "*hoyspenning* 48v 65v 110v 60v 50v 55v 80v 100v *48v* *65v* *110v* inj inject* *injekt*",
          "*injector* *injecteur* *inyector* *iniettor* *inyeccion* *einspritz* *verstuiver*",
          "*wtryskiwacz* *insprutar* *spridare* *solenoid* *magnetventil* driver drv *treiber*",
          "*pilote* coil coils spule* *bobin* *spoel* *cewk* *spole* *dcdc* *converter* *wandler*",
          "*convert* *omvormer* *przetwor* *omvandlare* *hochsetz* *elevat* *stepup* bulk piezo",
          "cap capacitor *kondensator* *condens* output out vout uout ausgang* *ausgang* sortie"
              + " salida",
          "uscita *uitgang* wyjscie *wyjsciow* utgang* *utgang* udgang* vystup kimenet iesire"
              + " cikis",
          "*выход* *бустер* *форсун* vboost uboost vhv uhv hvv ignenergy *zundenergie* *energy*",
          "rail48 *verhog* *podwyzsz* *hojnings* *surelev* *suralim* *sovralim* *sobrealim*");

  /** Of those, what no other voltage of an engine is called by. */
  static final Words OUTPUT_SURE =
      Words.of(
          "*boost* hv 48v 65v 110v *48v* *65v* *110v* *highvoltage* *hochspannung* *hautetension*",
          "*altatension* *hoogspanning* *wysokienapiecie* *hogspanning* vout uout *dcdc*"
              + " *converter*",
          "*wandler* *output* *ausgang* vboost uboost *hochsetz* *bobin* coil driver"
              + " *injektortreiber*");

  /** The converter's own input: a supply, whatever else the name says. */
  static final Words INPUT =
      Words.of(
          "input in vin uin eingang* *eingang* entree entrada ingresso *wejsci* vstup bemenet"
              + " intrare",
          "ingang* *ingangs* inngang indgang* giris *вход*");

  /** Voltages that are not feeds. */
  static final Words NOT_A_FEED =
      Words.of(
          "sensor* *sensor* o2 *lambda* *throttle* tps pedal* *pedal* app map maf egr agr glow*"
              + " gluh*",
          "*gluh* *bougie* *prechauff* *candelett* *precalent* fan *lufter* heater *heiz* lamp*",
          "ref *reference* *referenz* 5v 5vref temp* *temp* coolant oil knock level tank cell trim",
          "starter* *anlasser* *fuelpump* *kraftstoffpumpe* solenoide iac maximum minimum max min");

  static final Words COMMANDED =
      Words.of(
          "cmd command commanded cmded comm *command* desired des target tgt setpoint set sp"
              + " request*",
          "req soll *sollwert* sollspannung *soll* vorgabe consigne commande* *consigne* objetivo",
          "deseada deseado comandata comandato obiettivo richiesta richiesto gewenst* ingesteld*",
          "streef* *zadan* zadany wymagan* borvarde* *borvarde* onsket* oensket* *settpunkt*"
              + " pozadovan*",
          "kivant tavoite* asetus* hedef* demand demande* desejada alvo spec specified *задан*");

  static final Words PRESSURE =
      Words.of(
          "press pressure *pressure* *druck* *lade* pression presion pressione pressao *druk*",
          "cisnienie *tryck* *tryk* *trykk* tlak nyomas paine presiune basinc map manifold"
              + " *manifold*",
          "turbo* intake kpa psi bar mbar hpa inhg charge *saugrohr* *admission* *aspiraz*"
              + " *inlaat*",
          "wastegate *давлен* *suralimentation* *sovralimentazione* *sobrealimentacion*");

  /** Boost as the intake has it. */
  static final Words INTAKE_BOOST = Words.of("*boost* *lade* *suralim* *sovralim* *sobrealim*");

  static final Words COUNTS =
      Words.of("count counts cts raw adc digits lsb rohwert* roh brut crudo grezzo ruw surow*");

  static final Words FUEL =
      Words.of(
          "*fuelrate* *fuelqty* *fuelquantity* *fuelmass* *fuelflow* *fueling* *fuelling*"
              + " *fuelvol*",
          "*fueldeliver* *injqty* *injectionquantity* *injquantity* *injectedquant* *injectedfuel*",
          "*injectionmass* *einspritzmenge* *einspritzm* *kraftstoffmenge* *einspritzzeit*",
          "*einspritzdauer* *pulsewidth* *pulswidth* ipw *injpw* *injpulse* *injectorpulse*",
          "*injectiontime* *injectionduration* *injectorontime* *debitinject* *quantiteinject*",
          "*tempsdinjection* *dureeinjection* *debitcarburant* *cantidadinyect* *cantidaddeinyec*",
          "*tiempodeinyeccion* *caudalinyect* *quantitainiet* *quantitadiiniez* *portatainiez*",
          "*tempodiiniezione* *inspuithoeveel* *inspuitduur* *ingespoten* *dawkapaliwa*"
              + " *dawkawtrysk*",
          "*czaswtrysku* *insprutningsm* *insprutningst* *bransleman* *indsprojtningsm*"
              + " *innsproyt*",
          "*quantidadeinjet* *massacombustivel* *vstrikovanem* *befecskend* *ruiskutusm*"
              + " *cantitateinj*",
          "*puskurtme* *цикловаяподача* *топливоподача* *injvolume* *injamount*");

  static final Words NOT_FUEL =
      Words.of(
          "press* *druck* *pression* *presion* *pressione* temp* level trim *trim* tank pump*"
              + " volt*",
          "*spannung* *limit* max driver* *rail*");

  static final Words SYNC =
      Words.of(
          "sync* *synchron* *synchro* *camsync* *cranksync* *sincron* *synkron* *синхр*",
          "*injectionstat* *injectionenabl* *injectionactiv* *injectionallow* *injectionpermit*",
          "*injectionreleas* *injectorenabl* *injectoractiv* *fuelenabl* *fuelingenabl*",
          "*fuellingenabl* *einspritzungaktiv* *einspritzfreigabe* *freigabeeinspritzung*",
          "*einspritzungfreigegeben* *injectionautoris* *inyeccionactiva* *iniezioneattiva*");

  /** A fault of it, or how often it was lost, is no state. */
  static final Words NOT_SYNC =
      Words.of(
          "*fault* *error* *fehler* *loss* *lost* *count* *verlust* *zahler* *offset* *angle*");

  /** Measured at the terminals of the module that makes the output. */
  static final Words AT_THE_MODULE =
      Words.of(
          "*module* modul moduls *modulversorg* driver *injector* *inject* *converter* *wandler*"
              + " terminal",
          "terminals *moduleconnector* modulo moduli modulu modulen *modulspann* *treiber*");

  static final Words ENGINE_COMPUTER =
      Words.of(
          "control ecu* ecm* pcm *steuergerat* *calculateur* *centralin* *centralita* *sterownik*",
          "*styrenhet* *regeleenheid* engine ign ignition *zundung* *zuendung* logic kl15 switched",
          "*klemme15* contact kontakt contacto contatto encendido *allumage* relay main");

  static final Words FAR_OFF =
      Words.of(
          "alternator* *alternat* generator *lichtmaschine* charging *lade* adapter dongle obd dlc",
          "system *bordnetz* vehicle *netz* usb tool");

  static final Words BATTERY =
      Words.of(
          "bat bat+ batt b+ vbat ubat ubatt vbatt *batter* *bateri* *akku* accu* *akumul* акб");

  /** Says where; dropped as {@link #PERSONAL} is. */
  static final Words POSITION =
      Words.of(
          "lat latitude lon lng long longitude *latitude* *longitude* *breitengrad* *langengrad*",
          "*laengengrad* *latitud* *longitud* latitudine longitudine *breedtegraad* *lengtegraad*",
          "*szerokosc* *dlugoscgeo* gps *gps* altitude elevation heading bearing hoehe hohe kurs",
          "location standort ort coordinates coord koordinat*");

  static final Words PERSONAL =
      Words.of(
          "vin *fahrgestell* fgst fin chassis* *numerodeserie* driver fahrer* conducteur conductor",
          "conducente autista bestuurder kierowca forare forer name user username nutzer benutzer",
          "utilisateur usuario utente gebruiker uzytkownik owner eigentumer halter besitzer",
          "proprietaire titular customer kunde client cliente klant klient kund plate licence"
              + " license",
          "kennzeichen *immatric* matricula targa kenteken rejestr* registration phone telefon*",
          "telephone telefono mobile imei *deviceid* email mail address adresse direccion"
              + " indirizzo",
          "adres street *postcode* zip ssid *macaddress* odometer *kilometerstand* *serialnumber*",
          "*seriennummer*");
}
