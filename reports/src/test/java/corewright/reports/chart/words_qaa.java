package corewright.reports.chart;

import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;

/** The bundle of {@link corewright.reports.NoLanguage}; its name is how Java finds it. */
public final class words_qaa extends ResourceBundle {
  private final ResourceBundle english =
      ResourceBundle.getBundle("corewright.reports.chart.words", Locale.ENGLISH);

  @Override
  protected Object handleGetObject(String key) {
    return corewright.reports.NoLanguage.of(english.getString(key));
  }

  @Override
  public Enumeration<String> getKeys() {
    return english.getKeys();
  }
}
