package corewright.reports.document;

/** What a document asks of the record that it is made from. */
public interface KeptRecord {
  /** For documents that name no record and are not signed. */
  KeptRecord NONE =
      new KeptRecord() {
        @Override
        public String head() {
          return "";
        }

        @Override
        public String text(Object part) {
          throw new IllegalStateException("nothing can be certified without a record");
        }
      };

  /** Where the record ends, as it is printed: {@code bench-1:1042:9f86d081884c7d65}; or nothing. */
  String head();

  /** A part of the record as text; the same part always gives the same text. */
  String text(Object part);
}
