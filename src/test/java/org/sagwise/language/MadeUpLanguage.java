package org.sagwise.language;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.yaml.snakeyaml.Yaml;

/**
 * A third language, made of the English texts in double brackets, that no line of the program knows.
 * Written as a translator would: a line in the list of languages, and texts beside the others. What
 * stands outside of brackets where the program speaks it is in no bundle.
 */
public final class MadeUpLanguage {

    /** A code that ISO 639 keeps free for private use. */
    public static final String CODE = "qaa";

    private static final Path RESOURCES = Path.of("src/main/resources/org/sagwise");
    private static final String OPEN = "[[";
    private static final String CLOSE = "]]";

    private final Path folder;

    private MadeUpLanguage(Path folder) {
        this.folder = folder.resolve("org/sagwise");
    }

    /** The program with this language; its own classes are loaded anew, libraries are shared. */
    public static ClassLoader program(Path folder) throws IOException {
        MadeUpLanguage language = new MadeUpLanguage(folder);
        language.list();
        language.bundles();
        language.demos();
        language.catalogue();
        language.lessons();
        return new Speaking(List.of(folder, Path.of("target/classes")));
    }

    private void list() throws IOException {
        String list = Files.readString(RESOURCES.resolve("texts/languages.txt"));
        write("texts/languages.txt", list + CODE + "\n");
    }

    private void bundles() throws IOException {
        for (Path bundle : files(RESOURCES.resolve("texts"), ".properties")) {
            String name = bundle.getFileName().toString().replace(".properties", "");
            if (!name.contains("_")) {
                Properties texts = new Properties();
                texts.load(Files.newBufferedReader(bundle));
                texts.replaceAll((key, text) -> bracketed((String) text));
                store("texts/" + name, texts);
            }
        }
    }

    private void demos() throws IOException {
        Properties texts = new Properties();
        for (Path file : files(Path.of("demo-scenarios"), ".sagwise.json")) {
            String demo = file.getFileName().toString().replace(".sagwise.json", "");
            JsonNode scenario = new ObjectMapper().readTree(file.toFile());
            texts.put(demo + ".title", bracketed(scenario.path("title").asText()));
            texts.put(demo + ".about", bracketed(scenario.path("about").asText()));
            for (JsonNode part : scenario.path("parts")) {
                String name = part.path("label").asText(part.path("id").asText());
                texts.put(demo + ".label." + part.path("id").asText(), bracketed(name));
            }
            for (JsonNode note : scenario.path("notes")) {
                texts.put(
                        demo + ".note." + note.path("on").asText(),
                        bracketed(note.path("text").asText()));
            }
        }
        store("demo/texts", texts);
    }

    private void catalogue() throws IOException {
        for (Path file : files(RESOURCES.resolve("catalogue"), ".json")) {
            JsonNode root = new ObjectMapper().readTree(file.toFile());
            translate(root);
            write("catalogue/" + file.getFileName(), root.toPrettyString());
        }
    }

    private static void translate(JsonNode node) {
        node.forEach(MadeUpLanguage::translate);
        if (node instanceof ObjectNode text && text.path("en").isTextual()) {
            text.put(CODE, bracketed(text.path("en").asText()));
        }
    }

    private void lessons() throws IOException {
        for (Path file : files(Path.of("lessons"), "lesson.yaml")) {
            Object root = new Yaml().load(Files.readString(file));
            translate(root);
            write("lessons/" + file.getParent().getFileName() + "/lesson.yaml", new Yaml().dump(root));
        }
    }

    @SuppressWarnings("unchecked")
    private static void translate(Object node) {
        if (node instanceof List<?> list) {
            list.forEach(MadeUpLanguage::translate);
        } else if (node instanceof Map<?, ?> map) {
            map.values().forEach(MadeUpLanguage::translate);
            if (map.get("en") instanceof String english) {
                ((Map<String, Object>) map).put(CODE, bracketed(english));
            }
        }
    }

    private static String bracketed(String text) {
        return text.isBlank() ? text : OPEN + text + CLOSE;
    }

    /** What stands outside of brackets; lines are as they are. */
    public static String outside(String text) {
        StringBuilder rest = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            if (text.startsWith(OPEN, i)) {
                depth++;
                i++;
            } else if (text.startsWith(CLOSE, i) && depth > 0) {
                depth--;
                i++;
                rest.append(' ');
            } else if (depth == 0) {
                rest.append(text.charAt(i));
            }
        }
        return rest.toString();
    }

    /** Names of catalogue entries, which scenario files hold and no language translates. */
    public static Set<String> ids() throws IOException {
        Set<String> ids = new TreeSet<>();
        for (Path file : files(RESOURCES.resolve("catalogue"), ".json")) {
            new ObjectMapper().readTree(file.toFile()).findValuesAsText("id").forEach(ids::add);
        }
        return ids;
    }

    private void store(String name, Properties texts) throws IOException {
        Path file = folder.resolve(name + "_" + CODE + ".properties");
        Files.createDirectories(file.getParent());
        try (Writer writer = Files.newBufferedWriter(file)) {
            texts.store(writer, null);
        }
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    /** Loads the program's own classes and resources anew. */
    private static final class Speaking extends URLClassLoader {

        private static final String OURS = "org.sagwise.";

        Speaking(List<Path> folders) throws MalformedURLException {
            super(urls(folders), MadeUpLanguage.class.getClassLoader());
        }

        private static URL[] urls(List<Path> folders) throws MalformedURLException {
            List<URL> urls = new ArrayList<>();
            for (Path folder : folders) {
                urls.add(folder.toUri().toURL());
            }
            return urls.toArray(URL[]::new);
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                if (!name.startsWith(OURS)) {
                    return super.loadClass(name, resolve);
                }
                Class<?> known = findLoadedClass(name);
                return known == null ? findClass(name) : known;
            }
        }

        @Override
        public URL getResource(String name) {
            URL own = findResource(name);
            return own == null ? super.getResource(name) : own;
        }

        @Override
        public Enumeration<URL> getResources(String name) throws IOException {
            return name.startsWith(OURS.replace('.', '/')) ? findResources(name) : super.getResources(name);
        }
    }
}
