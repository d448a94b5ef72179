package corewright.station.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.Arrays;
import picocli.CommandLine;

/** A command line with somebody who types; what was typed ends as a pipe ends. */
record Typing(int code, String out, String err) {

  static Typing nothing(Object... words) {
    return lines("", words);
  }

  /** The same with {@code --shop} behind the words. */
  static Typing inShop(Path shop, String typed, Object... words) {
    Object[] all = Arrays.copyOf(words, words.length + 2, Object[].class);
    all[words.length] = "--shop";
    all[words.length + 1] = shop;
    return lines(typed, all);
  }

  static Typing lines(String typed, Object... words) {
    InputStream before = System.in;
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    System.setIn(new ByteArrayInputStream(typed.getBytes(Charset.defaultCharset())));
    try {
      CommandLine line =
          Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err, true));
      String[] arguments = new String[words.length];
      for (int i = 0; i < words.length; i++) {
        arguments[i] = words[i].toString();
      }
      int code = line.execute(arguments);
      return new Typing(code, out.toString(), err.toString());
    } finally {
      System.setIn(before);
    }
  }

  JsonNode json() {
    try {
      return new ObjectMapper().readTree(out);
    } catch (IOException none) {
      throw new UncheckedIOException(out + err, none);
    }
  }
}
