package org.shortgrain.report.pdf.tagged;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** Makes a document fit for the archive: identity, metadata, colour, language, and the files it carries. */
final class Archive {

    private static final DateTimeFormatter PDF_DATE = DateTimeFormatter.ofPattern("'D:'uuuuMMddHHmmss", Locale.ROOT);
    private static final int SECONDS_PER_MINUTE = 60;
    private static final int MINUTES_PER_HOUR = 60;
    private static final COSName MOD_DATE = COSName.MOD_DATE;

    private final PDDocument file;
    private final COSDictionary catalog;
    private final Manuscript manuscript;
    private final String date;

    private Archive(PDDocument file, Manuscript manuscript) {
        this.file = file;
        this.catalog = file.getDocumentCatalog().getCOSObject();
        this.manuscript = manuscript;
        this.date = pdfDate(manuscript.metadata().date());
    }

    static void seal(PDDocument file, Manuscript manuscript) throws IOException {
        Archive archive = new Archive(file, manuscript);
        archive.describe();
        archive.addOutputIntent();
        archive.addMetadata();
        if (!manuscript.attachments().isEmpty()) {
            archive.attach(manuscript.attachments());
        }
    }

    private void describe() {
        Metadata metadata = manuscript.metadata();
        file.setDocumentId(metadata.seed());
        file.setVersion(1.7f);
        COSDictionary information = file.getDocumentInformation().getCOSObject();
        information.setString(COSName.TITLE, metadata.title());
        information.setString(COSName.AUTHOR, metadata.author());
        information.setString(COSName.SUBJECT, metadata.subject());
        information.setString(COSName.KEYWORDS, metadata.keywords());
        information.setString(COSName.CREATOR, metadata.tool());
        information.setString(COSName.PRODUCER, metadata.tool());
        information.setString(COSName.CREATION_DATE, date);
        information.setString(MOD_DATE, date);
        catalog.setString(COSName.LANG, metadata.language());
        catalog.setItem(COSName.MARK_INFO, flag("Marked"));
        catalog.setItem(COSName.VIEWER_PREFERENCES, flag("DisplayDocTitle"));
        catalog.setName(COSName.PAGE_MODE, "UseOutlines");
        for (PDPage page : file.getPages()) {
            page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        }
    }

    private static COSDictionary flag(String name) {
        COSDictionary dictionary = new COSDictionary();
        dictionary.setDirect(true);
        dictionary.setBoolean(COSName.getPDFName(name), true);
        return dictionary;
    }

    static String pdfDate(OffsetDateTime date) {
        int minutes = date.getOffset().getTotalSeconds() / SECONDS_PER_MINUTE;
        return PDF_DATE.format(date) + String.format(Locale.ROOT, "%s%02d'%02d'", minutes < 0 ? "-" : "+",
                Math.abs(minutes) / MINUTES_PER_HOUR, Math.abs(minutes) % MINUTES_PER_HOUR);
    }

    /** By hand: PDFBox's own way sends the profile through the JDK's colour code, which rewrites it. */
    private void addOutputIntent() throws IOException {
        PDStream profile = new PDStream(file, new ByteArrayInputStream(SrgbProfile.bytes()), COSName.FLATE_DECODE);
        profile.getCOSObject().setInt(COSName.N, 3);
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
        intent.setItem(COSName.S, COSName.GTS_PDFA1);
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, "sRGB");
        intent.setString(COSName.INFO, "sRGB primaries (IEC 61966-2-1), adapted to D50");
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
        COSArray intents = new COSArray();
        intents.add(intent);
        catalog.setItem(COSName.OUTPUT_INTENTS, intents);
    }

    /** Left uncompressed, so that a plain search of the archive finds it. */
    private void addMetadata() throws IOException {
        PDStream packet = new PDStream(file, new ByteArrayInputStream(Xmp.packet(manuscript.metadata())));
        packet.getCOSObject().setItem(COSName.TYPE, COSName.METADATA);
        packet.getCOSObject().setItem(COSName.SUBTYPE, COSName.getPDFName("XML"));
        catalog.setItem(COSName.METADATA, packet);
    }

    private void attach(List<Attachment> attachments) throws IOException {
        TreeMap<String, COSDictionary> byName = new TreeMap<>();
        COSArray associated = new COSArray();
        for (Attachment attachment : attachments) {
            COSDictionary specification = specification(attachment);
            associated.add(specification);
            if (byName.put(attachment.name(), specification) != null) {
                throw new IllegalArgumentException("two attachments are called " + attachment.name());
            }
        }
        COSArray names = new COSArray();
        for (Map.Entry<String, COSDictionary> entry : byName.entrySet()) {
            names.add(new COSString(entry.getKey()));
            names.add(entry.getValue());
        }
        COSDictionary leaf = new COSDictionary();
        leaf.setItem(COSName.NAMES, names);
        leaf.setItem(COSName.LIMITS,
                new COSArray(List.of(new COSString(byName.firstKey()), new COSString(byName.lastKey()))));
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.KIDS, new COSArray(List.of(leaf)));
        COSDictionary catalogNames = new COSDictionary();
        catalogNames.setItem(COSName.EMBEDDED_FILES, tree);
        catalog.setItem(COSName.NAMES, catalogNames);
        catalog.setItem(COSName.AF, associated);
    }

    private COSDictionary specification(Attachment attachment) throws IOException {
        PDStream stream = new PDStream(file, new ByteArrayInputStream(attachment.bytes()), COSName.FLATE_DECODE);
        COSDictionary embedded = stream.getCOSObject();
        embedded.setItem(COSName.TYPE, COSName.getPDFName("EmbeddedFile"));
        embedded.setItem(COSName.SUBTYPE, COSName.getPDFName(attachment.mimeType()));
        COSDictionary parameters = new COSDictionary();
        parameters.setItem(COSName.SIZE, COSInteger.get(attachment.bytes().length));
        parameters.setString(MOD_DATE, date);
        embedded.setItem(COSName.PARAMS, parameters);
        COSDictionary files = new COSDictionary();
        files.setItem(COSName.F, stream);
        files.setItem(COSName.UF, stream);
        COSDictionary specification = new COSDictionary();
        specification.setItem(COSName.TYPE, COSName.FILESPEC);
        specification.setString(COSName.F, attachment.name());
        specification.setString(COSName.UF, attachment.name());
        specification.setString(COSName.DESC, attachment.description());
        specification.setName(COSName.AF_RELATIONSHIP, attachment.relationship().word());
        specification.setItem(COSName.EF, files);
        return specification;
    }
}
