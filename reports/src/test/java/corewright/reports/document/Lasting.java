package corewright.reports.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/**
 * Judges a PDF with a validator that others wrote: does it last, and can a screen reader read it?
 */
final class Lasting {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Lasting() {}

  /** What a document lacks for PDF/A-3a and PDF/UA-1; empty when it has everything. */
  static List<String> faults(Path pdf) throws Exception {
    return List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1).stream()
        .flatMap(flavour -> faults(pdf, flavour).stream())
        .toList();
  }

  private static List<String> faults(Path pdf, PDFAFlavour flavour) {
    try (InputStream stream = Files.newInputStream(pdf);
        PDFAParser parser = Foundries.defaultInstance().createParser(stream, flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
          .map(
              a ->
                  flavour
                      + " "
                      + a.getRuleId().getClause()
                      + ": "
                      + a.getMessage()
                      + " at "
                      + a.getLocation().getContext())
          .distinct()
          .limit(20)
          .toList();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (Exception e) {
      throw new IllegalStateException("the validator could not read " + pdf, e);
    }
  }
}
