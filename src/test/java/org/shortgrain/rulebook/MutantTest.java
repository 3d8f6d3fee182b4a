package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MutantTest {

    private static List<String> spoilt(String when) {
        List<Mutant> mutants = Mutant.of("TEST-01", when);
        assertEquals(Mutant.UNCHANGED, mutants.get(0).change());
        return mutants.stream().skip(1).map(mutant -> mutant.when().strip().replaceAll("\\s+", " ")).toList();
    }

    @Test
    void eachConstraintIsLeftOutOnceAndTurnedRoundOnce() {
        assertEquals(List.of("$a : Place( !isHole(\"x, (\", y) )", "$a : Place( !( isWet() ), !isHole(\"x, (\", y) )",
                "$a : Place( isWet() )", "$a : Place( isWet(), isHole(\"x, (\", y) )"),
                spoilt("  $a : Place( isWet(), !isHole(\"x, (\", y) )"));
    }

    @Test
    void aLogicalAndPartsConstraintsLikeAComma() {
        assertEquals(spoilt("Part( a() && b() )"), spoilt("Part( a(), b() )"));
    }

    @Test
    void eachAlternativeOfAnOrIsSpoiltToo() {
        assertEquals(List.of("Part( )", "Part( !( a() || b > 2 ) )", "Part( b > 2 )", "Part( !( a() ) || b > 2 )",
                "Part( a() )", "Part( a() || b <= 2 )"), spoilt("Part( a() || b > 2 )"));
    }

    @Test
    void aNotIsLeftOutAndExchanged() {
        assertEquals(List.of("$s : Step( ) not Step( )", "$s : Step( !( is(\"seal\") ) ) not Step( )",
                "$s : Step( is(\"seal\") )", "$s : Step( is(\"seal\") ) exists Step( )"),
                spoilt("$s : Step( is(\"seal\") )\n  not Step( )"));
    }

    @Test
    void whatIsTakenFromAListKeepsItsSource() {
        assertEquals(List.of("$p : Place() $d : Drain( ) from $p.cavity().drains()".replace("Place()", "Place( )"),
                "$p : Place( ) $d : Drain( isBlind() ) from $p.cavity().drains()"),
                spoilt("$p : Place()\n  $d : Drain( !isBlind() ) from $p.cavity().drains()"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"a() > 2 | a() <= 2", "a() <= 2.5 | a() > 2.5", "a() == 2 | a() != 2",
        "a(b > 2) | !( a(b > 2) )", "!a() | a()", "t() matches \"H3[<> ]\" | t() not matches \"H3[<> ]\"",
        "id() not in (\"a\", \"b\") | id() in (\"a\", \"b\")", "any(x -> x.y()) | !( any(x -> x.y()) )"})
    void theOppositeOfAConstraint(String constraint, String opposite) {
        assertEquals(opposite, Condition.opposite(constraint));
    }

    @Test
    void whatTheReaderDoesNotKnowIsSaid() {
        assertThrows(IllegalArgumentException.class, () -> Condition.read("  forall( Place() )"));
        assertThrows(IllegalArgumentException.class, () -> Condition.read("  ( Place() or Part() )"));
    }

    @Test
    void everyRuleOfTheShippedRulebookCanBeSpoilt() throws RulebookException {
        RulebookFiles shipped = RulebookFiles.shipped();
        shipped.rules().forEach((name, text) -> new DrlFile(name, text).rules().forEach(rule -> assertTrue(
                Mutant.of(rule.id(), MutantRulebook.when(text.substring(rule.from(), rule.to()))).size() > 1, rule::id)));
    }
}
