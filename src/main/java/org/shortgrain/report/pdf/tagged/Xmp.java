package org.shortgrain.report.pdf.tagged;

import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * The metadata packet (XMP, ISO 16684-1) with the claims to PDF/A-3a and PDF/UA-1.
 *
 * <p>Written as text: the packet is fixed but for seven values, PDFBox's own XMP library has no PDF/UA schema, and its
 * XML writer would be the slowest part of a short report.
 */
final class Xmp {

    private static final DateTimeFormatter ISO = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private static final String PACKET = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
            <pdfaid:part>3</pdfaid:part>
            <pdfaid:conformance>A</pdfaid:conformance>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <pdfuaid:part>1</pdfuaid:part>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>%2$s</rdf:li></rdf:Seq></dc:creator>
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%3$s</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>%4$s</rdf:li></rdf:Bag></dc:language>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
            <xmp:CreatorTool>%5$s</xmp:CreatorTool>
            <xmp:CreateDate>%6$s</xmp:CreateDate>
            <xmp:ModifyDate>%6$s</xmp:ModifyDate>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <pdf:Producer>%5$s</pdf:Producer>
            <pdf:Keywords>%7$s</pdf:Keywords>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
             xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
            <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of ISO 14289 that the file follows</pdfaProperty:description>
            </rdf:li></rdf:Seq></pdfaSchema:property>
            </rdf:li></rdf:Bag></pdfaExtension:schemas>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="r"?>
            """;

    private Xmp() {
    }

    static byte[] packet(Metadata metadata) {
        return String.format(Locale.ROOT, PACKET, escaped(metadata.title()), escaped(metadata.author()),
                escaped(metadata.subject()), escaped(metadata.language()), escaped(metadata.tool()),
                ISO.format(metadata.date()), escaped(metadata.keywords())).getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replaceAll("\\p{Cntrl}", " ").replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
