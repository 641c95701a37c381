using System.Text;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

public class ReaderErrorTests
{
    private const string Opening = "$.projects[0].pieces[0].faces[0].openings[0]";
    private const string Face = "$.projects[0].pieces[0].faces[0]";

    /// <summary>What is replaced in the shortest course, by what, the path of the error, and words of its problem and fix.</summary>
    public static TheoryData<string, string, string, string, string> Faults { get; } = new()
    {
        // The walk
        { "\"name\": \"Autumn course\"", "\"name\": 5", "$.name", "a number stands here", "text in quotation marks" },
        { "\"name\": \"Autumn course\"", "\"name\": null", "$.name", "null stands here", "text in quotation marks" },
        { "\"name\": \"Autumn course\"", "\"name\": \"  \"", "$.name", "empty", "write it" },
        { "\"name\": \"Autumn course\",", "", "$.name", "\"name\" is missing", "What the course is called" },
        { "\"bench\": 1", "\"bench\": \"1\"", "$.projects[0].bench", "a text stands here", "whole number" },
        { "\"bench\": 1", "\"bench\": 1.5", "$.projects[0].bench", "1.5 is not a whole number", "digits" },
        { "\"bench\": 1", "\"bench\": 99999999999999999999", "$.projects[0].bench", "not a whole number", "digits" },
        { "\"bench\": 1", "\"bench\": 0", "$.projects[0].bench", "0 is outside the limits", "at least 1 and at most 999" },
        { "\"bench\": 1", "\"bench\": 1000", "$.projects[0].bench", "1000 is outside", "at most 999" },
        { "\"bench\": 1", "\"bench\": -1", "$.projects[0].bench", "-1 is outside", "at least 1" },
        { "\"side\": \"front\"", "\"side\": \"frnt\"", Face + ".side", "\"frnt\" is none of the words", "did you mean front? known here: front, back, left-end, right-end" },
        { "\"side\": \"front\"", "\"side\": \"LeftEnd\"", Face + ".side", "\"LeftEnd\" is none", "did you mean left-end?" },
        { "\"side\": \"front\"", "\"side\": 1", Face + ".side", "a number stands here", "front, back, left-end, right-end" },
        { "\"side\": \"front\"", "\"syde\": \"front\"", Face + ".syde", "unknown key \"syde\"", "did you mean side?" },
        { "\"side\": \"front\"", "\"syde\": \"front\"", Face + ".side", "\"side\" is missing", "add \"side\"" },
        { "\"side\": \"front\"", "\"side\": \"front\", \"side\": \"back\"", Face + ".side", "twice", "keep one" },
        { "\"side\": \"front\"", "\"side\": \"front\", \"a b\": 1", Face + "['a b']", "unknown key \"a b\"", "known here: id, side, layout, openings, fronts" },
        { "\"projects\": [", "\"projects\": [ 7,", "$.projects[0]", "a number stands here", "object in braces" },
        { "\"projects\": [", "\"runs\": [], \"projects\": [", "$.runs", "unknown key", "known here: format, version, id" },
        { "\"designs\": [", "\"overrides\": [], \"designs\": [", "$.overrides", "a list stands here", "settings in braces" },
        { "\"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"leaves\": { \"hinge\": \"left\" }", Opening + ".filling.leaves", "an object stands here", "list in square brackets" },
        { "\"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"leaves\": []", Opening + ".filling.leaves", "0 stand in this list", "of at least 1 and at most 12" },
        { "\"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"leaves\": [null]", Opening + ".filling.leaves[0]", "null stands here", "object" },
        { "\"design\": \"shaker\", \"leaves\"", "\"design\": \"shaker\", \"lapped\": \"no\", \"leaves\"", Opening + ".filling.lapped", "a text stands here", "true or false" },
        { "\"kind\": \"doors\", ", "", Opening + ".filling.kind", "\"kind\" is missing", "doors, drawers" },
        { "\"kind\": \"doors\"", "\"kind\": \"dors\"", Opening + ".filling.kind", "none of the kinds", "did you mean doors?" },
        { "\"kind\": \"doors\"", "\"kind\": 1", Opening + ".filling.kind", "a number stands here", "doors, drawers" },
        { "\"kind\": \"doors\"", "\"kind\": \"doors\", \"kind\": \"drawers\"", Opening + ".filling.kind", "twice", "keep one" },
        { "\"unit\": \"in\",", "\"unit\": \"inch\",", "$.unit", "\"inch\" is none of the words", "in, mm" },
        // Lengths
        { "\"29 1/2\"", "\"29 1/0\"", Opening + ".readings.heightLeft", "\"29 1/0\" cannot be read at character 6", "other than zero" },
        { "\"29 1/2\"", "\"tall\"", Opening + ".readings.heightLeft", "\"tall\"", "number" },
        { "\"29 1/2\"", "-29", Opening + ".readings.heightLeft", "\"-29\"", "negative" },
        { "\"29 1/2\"", "2.95e1", Opening + ".readings.heightLeft", "\"2.95e1\"", "exponent" },
        { "\"29 1/2\"", "true", Opening + ".readings.heightLeft", "true stands here", "a length in quotation marks" },
        { "\"29 1/2\"", "\"0\"", Opening + ".readings.heightLeft", "0 is too small", "above 0 in and at most 120 in" },
        { "\"29 1/2\"", "698", Opening + ".readings.heightLeft", "\"698\"", "did you mean 698 mm?" },
        { "\"stock\": \"four-quarter\",", "\"stock\": \"four-quarter\", \"topRail\": \"0\",", "$.designs[0].topRail", "0 is too small", "above 0 in and at most 24 in" },
        { "\"stock\": \"four-quarter\",", "\"stock\": \"four-quarter\", \"topRail\": \"24 1/64\",", "$.designs[0].topRail", "too large", "at most 24 in" },
        // Ids and references
        { "\"id\": \"shaker\"", "\"id\": \"Shaker\"", "$.designs[0].id", "\"Shaker\" cannot be an id", "small letters" },
        { "\"id\": \"shaker\"", "\"id\": \"-shaker\"", "$.designs[0].id", "cannot be an id", "starting with a letter or digit" },
        { "\"id\": \"shaker\"", "\"id\": \"a2345678901234567890123456789012345678901\"", "$.designs[0].id", "cannot be an id", "at most 40" },
        { "\"id\": \"case-1\"", "\"id\": \"shaker\"", "$.projects[0].pieces[0].id", "already used at $.designs[0].id", "of its own" },
        { "\"design\": \"shaker\"", "\"design\": \"shakr\"", Opening + ".filling.design", "no door design \"shakr\" here", "did you mean shaker? known here: shaker" },
        { "\"design\": \"shaker\"", "\"design\": \"case-1\"", Opening + ".filling.design", "\"case-1\" is no door design but a piece", "known here: shaker" },
        { "\"bench\": 1, \"name\": \"Hall cupboard\",", "\"bench\": 1, \"name\": \"Hall cupboard\", \"runs\": [{ \"id\": \"run\", \"items\": [{ \"kind\": \"face\", \"face\": \"face-1\" }, { \"kind\": \"face\", \"face\": \"face-2\" }] }],", "$.projects[0].runs[0].items[1].face", "no face \"face-2\"", "known here: face-1" },
        // Settings
        { "\"designs\": [", "\"overrides\": { \"gap.pairs\": 1 }, \"designs\": [", "$.overrides['gap.pairs']", "unknown setting \"gap.pairs\"", "did you mean gap.pair?" },
        { "\"designs\": [", "\"overrides\": { \"limit.field\": \"2\" }, \"designs\": [", "$.overrides['limit.field']", "belongs to the house standard", "change it in the standard" },
        { "\"designs\": [", "\"overrides\": { \"gap.pair\": \"1/8\", \"gap.pair\": \"1/4\" }, \"designs\": [", "$.overrides['gap.pair']", "twice", "keep one" },
        { "\"designs\": [", "\"overrides\": { \"gap.pair\": { \"source\": \"x\" } }, \"designs\": [", "$.overrides['gap.pair'].value", "missing", "gap of the pair" },
        { "\"designs\": [", "\"overrides\": { \"gap.pair\": { \"value\": 1, \"from\": \"x\" } }, \"designs\": [", "$.overrides['gap.pair'].from", "unknown key", "value, source" },
        { "\"designs\": [", "\"overrides\": { \"gap.pair\": { \"value\": 1, \"source\": 2 } }, \"designs\": [", "$.overrides['gap.pair'].source", "a number stands here", "text" },
        { "\"designs\": [", "\"overrides\": { \"gap.pair\": { \"value\": [1] } }, \"designs\": [", "$.overrides['gap.pair'].value", "a list stands here", "text or number" },
        { "\"designs\": [", "\"overrides\": { \"gap.pair\": \"thin\" }, \"designs\": [", "$.overrides['gap.pair']", "\"thin\"", "number" },
        { "\"designs\": [", "\"overrides\": { \"cut.bank-remainder\": \"botom\" }, \"designs\": [", "$.overrides['cut.bank-remainder']", "none of the values", "did you mean bottom?" },
        // What must go together
        { "\"widthBottom\": 23.75", "\"widths\": [23.75]", Opening + ".readings.widths", "unknown key \"widths\"", "widthTop" },
        { "\"heightLeft\": \"29 1/2\"", "\"heightLeft\": \"29 1/2\", \"fit\": \"plane-to-fit\"", Opening + ".readings.fit", "only an inset front", "inset" },
        { "{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }", "{ \"hinge\": \"left\", \"width\": 12 }, { \"hinge\": \"right\", \"width\": 12 }", Opening + ".filling.leaves[1].width", "every leaf has a width", "one leaf" },
        { "{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "{ \"hinge\": \"left\" }], \"lapped\": true", Opening + ".filling.lapped", "need a pair", "two leaves" },
        { "\"designs\": [", "\"overrides\": { \"panel.clearance-arch\": \"sides\" }, \"designs\": [", "$.overrides['panel.clearance-arch']", "\"sides\"", "or ends" },
        { "{ \"hinge\": \"right\" }]", "{ \"hinge\": \"right\", \"hingedTo\": \"3\" }]", Opening + ".filling.leaves[1].hingedTo", "no leaf \"3\" among 2", "from 1 to 2" },
        { "{ \"hinge\": \"right\" }]", "{ \"hinge\": \"right\", \"overrides\": { \"gap.pair\": \"1/4\" } }]", Opening + ".filling.leaves[1].overrides['gap.pair']", "belongs to the whole front", "overrides of the opening" },
        { "{ \"hinge\": \"right\" }]", "{ \"hinge\": \"right\", \"hingedTo\": \"right\" }]", Opening + ".filling.leaves[1].hingedTo", "hinged to itself", "on the frame" },
        { "\"mount\": \"overlay\"", "\"mount\": \"inset\", \"edges\": { \"left\": { \"kind\": \"share\" } }", Opening + ".filling.edges.left", "only an overlay front", "mount overlay" },
        { "\"kind\": \"doors\", \"mount\": \"overlay\", \"design\": \"shaker\", \"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"kind\": \"drawers\", \"mount\": \"overlay\", \"design\": \"shaker\", \"count\": 3, \"heights\": { \"kind\": \"proportional\", \"shares\": [1, 2] }", Opening + ".filling.heights.shares", "2 heights are listed for 3 fronts", "list 3" },
        { "\"kind\": \"doors\", \"mount\": \"overlay\", \"design\": \"shaker\", \"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"kind\": \"drawers\", \"mount\": \"overlay\", \"design\": \"shaker\", \"count\": 2, \"heights\": { \"kind\": \"proportional\", \"shares\": [1, 0] }", Opening + ".filling.heights.shares[1]", "0 is no share", "from 1" },
        { "\"kind\": \"doors\", \"mount\": \"overlay\", \"design\": \"shaker\", \"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"kind\": \"drawers\", \"mount\": \"overlay\", \"design\": \"shaker\", \"count\": 2, \"heights\": { \"kind\": \"given\", \"fronts\": [{}, {}] }", Opening + ".filling.heights.fronts", "2 fronts have no height", "all fronts but one" },
        { "\"kind\": \"doors\", \"mount\": \"overlay\", \"design\": \"shaker\", \"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"kind\": \"drawers\", \"mount\": \"overlay\", \"design\": \"shaker\", \"count\": 2, \"heights\": { \"kind\": \"given\", \"fronts\": [{ \"height\": 6 }, { \"height\": 8 }] }", Opening + ".filling.heights.fronts", "none can take the rest", "but one" },
        { "\"kind\": \"doors\", \"mount\": \"overlay\", \"design\": \"shaker\", \"leaves\": [{ \"hinge\": \"left\" }, { \"hinge\": \"right\" }]", "\"kind\": \"drawers\", \"mount\": \"overlay\", \"design\": \"shaker\", \"count\": 2, \"remainderIn\": 3", Opening + ".filling.remainderIn", "front 3 is to take", "from 1 to 2" },
        { "\"filling\": {", "\"beside\": { \"left\": { \"kind\": \"opening\", \"opening\": \"opening-1\", \"member\": 2 } }, \"filling\": {", Opening + ".beside.left.opening", "its own neighbour", "other side" },
        { "\"side\": \"front\"", "\"side\": \"front\", \"fronts\": [{ \"kind\": \"applied-end\", \"id\": \"end\", \"sideWidth\": 24, \"sideHeight\": 36, \"frameEdge\": \"3/4\", \"design\": \"shaker\" }]", Face + ".fronts[0].kind", "no end", "left-end or right-end" },
        { "\"side\": \"front\"", "\"side\": \"left-end\", \"fronts\": [{ \"kind\": \"applied-end\", \"id\": \"end\", \"sideWidth\": 24, \"sideHeight\": 36, \"frameEdge\": \"3/4\", \"design\": \"shaker\", \"reaches\": \"toe\" }]", Face + ".fronts[0].toeHeight", "height is not given", "toeHeight" },
        { "\"side\": \"front\"", "\"side\": \"front\", \"fronts\": [{ \"kind\": \"stated\", \"id\": \"panel\", \"width\": 24, \"height\": 36, \"design\": \"shaker\", \"number\": 3 }, { \"kind\": \"stated\", \"id\": \"panel-2\", \"width\": 24, \"height\": 36, \"design\": \"shaker\", \"number\": 3 }]", Face + ".fronts[1].number", "front 3 is already used at $.projects[0].pieces[0].faces[0].fronts[0].number", "its own number" },
        { "\"cutters\": \"cope-and-stick\",", "", "$.designs[0].cutters", "has no cutters", "house standard" },
        { ", \"panel\": { \"kind\": \"flat-sheet\", \"stock\": \"ply\" }", "", "$.designs[0].panel", "nothing in its lights", "open" },
        { "\"cutters\": \"cope-and-stick\", \"panel\"", "\"panel\"", "$.designs[0].cutters", "has no cutters", "cutter set" },
        { "\"construction\": \"cope-and-stick\"", "\"construction\": \"slab\"", "$.designs[0].panel", "a slab has no frame", "leave \"panel\" out" },
        { "\"flat-sheet\", \"stock\": \"ply\"", "\"raised\"", "$.designs[0].panel.stock", "no stock", "stock of the house standard" },
        { "\"flat-sheet\"", "\"glass\"", "$.designs[0].panel.stock", "take no stock", "leave" },
        { "\"flat-sheet\"", "\"raised\", \"gluedIn\": true", "$.designs[0].panel.gluedIn", "only a sheet panel", "leave" },
        { "\"flat-sheet\"", "\"raised\", \"safetyGlazing\": \"tempered\"", "$.designs[0].panel.safetyGlazing", "no glass", "leave" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"stiles\": { \"both\": 2, \"pull\": 3 }", "$.designs[0].stiles", "one width for both, or two", "\"hinge\" and \"pull\"" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"stiles\": { \"hinge\": 2 }", "$.designs[0].stiles", "one width for both, or two", "\"both\"" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"midRails\": {}", "$.designs[0].midRails", "neither count nor places", "\"places\"" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"midRails\": { \"count\": 1, \"places\": [{ \"height\": 12 }] }", "$.designs[0].midRails", "both a count and places", "\"count\"" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"midStiles\": [{ \"row\": 2, \"count\": 1 }]", "$.designs[0].midStiles[0].row", "the rows are 1", "from the bottom" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"lights\": [{ \"light\": 2, \"filling\": { \"kind\": \"open\" } }]", "$.designs[0].lights[0].light", "the lights are 1", "bottom left" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"eyebrow\" }", "$.designs[0].topArch.rise", "has no rise", "add \"rise\"" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"half-round\", \"rise\": 3 }", "$.designs[0].topArch.rise", "half its span", "leave \"rise\" out" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"eyebrow\", \"rise\": 3, \"reverseToCrown\": { \"reverse\": 1, \"crown\": 2 } }", "$.designs[0].topArch.reverseToCrown", "no reverse arcs", "leave \"reverseToCrown\" out" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"cathedral\", \"rise\": 3, \"reverseToCrown\": { \"reverse\": 0, \"crown\": 2 } }", "$.designs[0].topArch.reverseToCrown.reverse", "0", "1" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"eyebrow\", \"rise\": 3, \"acrossPair\": \"middle\" }", "$.designs[0].topArch.acrossPair", "middle", "middle-of-pair" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"eyebrow\", \"rise\": 3, \"perLight\": true, \"acrossPair\": \"middle-of-pair\" }", "$.designs[0].topArch.acrossPair", "cannot repeat over each light", "leave" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"acrossPair\": \"each-meeting-stile\", \"curve\": [{ \"kind\": \"arc\", \"viaX\": 2, \"viaY\": 1, \"x\": 9, \"y\": 0 }] }", "$.designs[0].topArch.acrossPair", "where it was drawn", "middle-of-pair" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"double-curve\" }", "$.designs[0].topArch.rise", "has no rise", "add \"rise\"" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"bottomArch\": { \"family\": \"double-curve\", \"rise\": 2, \"shoulder\": 1 }", "$.designs[0].bottomArch.shoulder", "no shoulders", "choose cathedral" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"curve\": [{ \"kind\": \"line\", \"x\": 2, \"y\": 0 }, { \"kind\": \"arc\", \"viaX\": 4, \"viaY\": 0, \"x\": 9, \"y\": 0 }] }", "$.designs[0].topArch.curve[1]", "in one line", "make it a line" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"curve\": [{ \"kind\": \"line\", \"x\": 2, \"y\": 1 }, { \"kind\": \"line\", \"x\": 1, \"y\": 2 }, { \"kind\": \"line\", \"x\": 9, \"y\": 0 }] }", "$.designs[0].topArch.curve[1]", "back to the left", "let x grow" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"curve\": [{ \"kind\": \"line\", \"x\": 2, \"y\": 1 }] }", "$.designs[0].topArch.curve[0]", "not end at the spring line", "y 0" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"curve\": [{ \"kind\": \"bow\", \"x\": 2, \"y\": 1 }] }", "$.designs[0].topArch.curve[0].kind", "bow", "arc" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"rise\": 2 }", "$.designs[0].topArch.rise", "highest point", "leave" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\" }", "$.designs[0].topArch.curve", "no curve", "list of steps" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"eyebrow\", \"rise\": 2, \"curve\": [{ \"kind\": \"line\", \"x\": 2, \"y\": 0 }] }", "$.designs[0].topArch.curve", "only a drawn arch", "leave" },
        { "\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stick\", \"topArch\": { \"family\": \"drawn\", \"shoulder\": 2, \"curve\": [{ \"kind\": \"arc\", \"viaX\": 2, \"viaY\": 1, \"x\": 9, \"y\": 0 }] }", "$.designs[0].topArch.shoulder", "among its steps", "leave" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_told_with_its_place_and_fix(string sound, string faulty, string path, string problem, string fix)
    {
        Assert.Contains(sound, Files.Course, StringComparison.Ordinal);
        var at = Files.Course.IndexOf(sound, StringComparison.Ordinal);
        var errors = Files.Errors(DocumentReader.ReadCourse(Files.Course.Remove(at, sound.Length).Insert(at, faulty)));
        Assert.True(errors.Any(error => error.Path == path && error.Problem.Contains(problem, StringComparison.Ordinal) && error.Fix.Contains(fix, StringComparison.Ordinal)),
            string.Join('\n', errors));
        Assert.All(errors, error => Assert.NotNull(error.Line));
    }

    /// <summary>Layouts, put into the face of the shortest course.</summary>
    [Theory]
    [InlineData("{ \"size\": 3 }", ".space.size", "the outermost space")]
    [InlineData("{ \"columns\": { \"spaces\": [{}, {}], \"member\": 2 }, \"rows\": { \"spaces\": [{}, {}], \"member\": 2 } }", ".space.rows", "both columns and rows")]
    [InlineData("{ \"columns\": { \"spaces\": [{}, {}] } }", ".space.columns.member", "no width")]
    [InlineData("{ \"columns\": { \"spaces\": [{}, {}], \"member\": 2, \"members\": [2] } }", ".space.columns.members", "both one width and listed")]
    [InlineData("{ \"columns\": { \"spaces\": [{}, {}], \"members\": [2, 2] } }", ".space.columns.members", "2 members are listed, but 2 spaces have 1")]
    [InlineData("{ \"columns\": { \"spaces\": [{}, {}], \"members\": [0] } }", ".space.columns.members[0]", "no width")]
    [InlineData("{ \"columns\": { \"spaces\": [{}], \"member\": 2 } }", ".space.columns.spaces", "1 stand in this list")]
    [InlineData("{ \"opening\": { \"id\": \"in-layout\", \"filling\": { \"kind\": \"drawers\", \"mount\": \"inset\", \"design\": \"shaker\" }, \"beside\": { \"top\": { \"kind\": \"wall\", \"member\": 2 } } } }", ".space.opening.beside", "which the layout tells")]
    public void A_fault_of_a_layout_is_told(string space, string path, string problem)
    {
        var text = Files.Course.Replace("\"side\": \"front\"", $$"""
            "side": "front", "layout": { "width": 40, "height": 30, "leftStile": { "width": "1 3/4" }, "rightStile": { "width": "1 3/4" }, "topRail": 2, "bottomRail": 0, "space": {{space}} }
            """, StringComparison.Ordinal);
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(text)));
        Assert.Equal(Face + ".layout" + path, error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"grooveDepth\": \"3/8\", \"copeLength\": \"7/16\"", "$.cutters[0].copeLength", "longer than the groove")]
    [InlineData("\"grooveDepth\": \"3/8\", \"copeLength\": \"3/8\", \"grooveWidth\": \"5/8\"", "$.cutters[0].grooveWidth", "run out of the back")]
    [InlineData("\"grooveDepth\": \"3/8\", \"copeLength\": \"3/8\", \"thinnestStock\": \"1\"", "$.cutters[0].thinnestStock", "thicker than the thickest")]
    public void Cutters_that_cannot_cut_are_refused(string changed, string path, string problem)
    {
        var other = new Dictionary<string, string> { ["grooveWidth"] = "1/4", ["grooveFromFace"] = "1/4", ["stickingWidth"] = "3/8", ["thinnestStock"] = "3/4", ["thickestStock"] = "7/8" };
        var rest = string.Join(", ", other.Where(one => !changed.Contains(one.Key, StringComparison.Ordinal)).Select(one => $"\"{one.Key}\": \"{one.Value}\""));
        var text = Files.Standard.Replace("\"base\": \"in\"", $$"""
            "base": "in", "cutters": [{ "id": "ours-1", "name": "Ours", {{changed}}, {{rest}} }]
            """, StringComparison.Ordinal);
        var error = Assert.Single(Files.Errors(DocumentReader.ReadStandard(text)));
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"cut.step\": \"0\"", "$.settings['cut.step']", "is zero")]
    [InlineData("\"print.finest\": 12", "$.settings['print.finest']", "\"12\" is none of the values")]
    [InlineData("\"print.finest\": 32.0", "$.settings['print.finest']", "\"32.0\" is none of the values")]
    [InlineData("\"cut.stp\": \"1/32\"", "$.settings['cut.stp']", "unknown setting")]
    public void Settings_of_a_standard_are_checked(string setting, string path, string problem)
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadStandard(Files.Standard.Replace("\"base\": \"in\"", $$"""
            "base": "in", "settings": { {{setting}} }
            """, StringComparison.Ordinal))));
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void An_id_of_the_shipped_lists_cannot_be_used_again_where_they_hold()
    {
        var text = Files.Standard.Replace("\"base\": \"in\"", """
            "base": "in", "stocks": [{ "id": "shaper", "name": "Ours", "kind": "solid", "planed": "3/4" }]
            """, StringComparison.Ordinal);
        var error = Assert.Single(Files.Errors(DocumentReader.ReadStandard(text)));
        Assert.Equal("$.stocks[0].id", error.Path);
    }

    [Theory]
    [InlineData("9/4", "3/4", "$.stocks[0].nominal", "no nominal thickness")]
    [InlineData("3/4", "7/8", "$.stocks[0].planed", "cannot be planed to more than it has")]
    public void Nominal_thickness_is_in_the_table_and_planing_takes_wood_off(string nominal, string planed, string path, string says)
    {
        var text = $$"""
            { "format": "stilewright/standard", "version": 1, "id": "own", "name": "Own", "unit": "in",
            "base": "in", "stocks": [{ "id": "odd", "name": "Ours", "kind": "solid", "nominal": "{{nominal}}", "planed": "{{planed}}" }] }
            """;
        var error = Assert.Single(Files.Errors(DocumentReader.ReadStandard(text)));
        Assert.Equal(path, error.Path);
        Assert.Contains(says, error.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cathedral", "2", "14", "12", "$.patterns[0].leastSpan", "more than the greatest")]
    [InlineData("drawn", "2", "8", "12", "$.patterns[0].family", "takes no drawn curves")]
    [InlineData("cathedral", "7", "8", "12", "$.patterns[0].rise", "no arch of this family")]
    public void Patterns_of_the_rack_have_a_range_and_a_curve(string family, string rise, string least, string greatest, string path, string says)
    {
        var text = Files.Standard.Replace("\"base\": \"in\"", $$"""
            "base": "in", "patterns": [{ "id": "tall", "name": "Tall", "family": "{{family}}", "rise": "{{rise}}", "leastSpan": "{{least}}", "greatestSpan": "{{greatest}}" }]
            """, StringComparison.Ordinal);
        var error = Assert.Single(Files.Errors(DocumentReader.ReadStandard(text)));
        Assert.Equal(path, error.Path);
        Assert.Contains(says, error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_that_is_all_sanded_away_is_refused()
    {
        var text = Files.Standard.Replace("\"base\": \"in\"", """
            "base": "in", "stocks": [{ "id": "thin", "name": "Ours", "kind": "solid", "planed": "1/8", "faceLoss": "1/16", "backLoss": "1/16" }]
            """, StringComparison.Ordinal);
        Assert.Equal("$.stocks[0].planed", Assert.Single(Files.Errors(DocumentReader.ReadStandard(text))).Path);
    }

    [Fact]
    public void Every_error_of_a_file_is_told_in_the_order_of_the_file()
    {
        var text = Files.Course
            .Replace("\"version\": 2,", "\"version\": \"one\",", StringComparison.Ordinal)
            .Replace("\"standard\": \"inch\",", "\"standart\": \"inch\",", StringComparison.Ordinal)
            .Replace("\"species\": \"cherry\"", "\"species\": 4", StringComparison.Ordinal)
            .Replace("\"kind\": \"flat-sheet\"", "\"kind\": \"glass\"", StringComparison.Ordinal)
            .Replace("\"bench\": 1", "\"bench\": 0", StringComparison.Ordinal)
            .Replace("\"23 3/4\"", "\"23 3//4\"", StringComparison.Ordinal)
            .Replace("\"design\": \"shaker\"", "\"design\": \"shakers\"", StringComparison.Ordinal)
            .Replace("{ \"hinge\": \"right\" }", "{ \"hinge\": \"right\", \"hinge\": \"rigth\", \"hingedTo\": 1 }", StringComparison.Ordinal);
        var errors = Files.Errors(DocumentReader.ReadCourse(text));
        Assert.Equal(
        [
            "$.standard", "$.version", "$.standart", "$.designs[0].species", "$.designs[0].panel.stock", "$.projects[0].bench",
            Opening + ".readings.widthTop", Opening + ".filling.design", Opening + ".filling.leaves[1].hinge", Opening + ".filling.leaves[1].hingedTo",
        ], errors.Select(error => error.Path));
        Assert.Equal(errors.OrderBy(error => error.Line).Select(error => error.Path), errors.Select(error => error.Path));
    }

    [Fact]
    public void Places_are_told_by_line_and_character()
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(Files.Course.Replace("\"Autumn course\", \"standard\": \"inch\"", "\"½ 🪚\", \"standard\": 5", StringComparison.Ordinal))));
        Assert.Equal((3, 46), (error.Line, error.Column));
        Assert.Equal("$.standard (line 3, column 46): a number stands here; write a text in quotation marks", error.ToString());
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("  \n", "the file is empty")]
    [InlineData("[]", "holds a list where an object belongs")]
    [InlineData("7", "holds a number where")]
    [InlineData("null", "holds null where")]
    [InlineData("{ \"format\": \"stilewright/course\", \"version\": 1", "ends before it is complete")]
    [InlineData("{ \"name\": \"Autumn", "ends before it is complete")]
    [InlineData("{ \"format\": \"stilewright/course\", }", "a comma with nothing after it")]
    [InlineData("{ \"format\": }", "a key without a value")]
    [InlineData("{ \"format\": 'x' }", "single quotation marks")]
    [InlineData("{ format: 1 }", "a word outside quotation marks")]
    [InlineData("{ \"format\": inch }", "a word outside quotation marks")]
    [InlineData("{ \"a\": 1 \"b\": 2 }", "something is missing between two values")]
    [InlineData("{ \"a\": [{} {}] }", "something is missing between two values")]
    [InlineData("{ \"a\": [1, 2} }", "a bracket that closes something else")]
    [InlineData("{ \"a\": 3/8 }", "a fraction outside quotation marks")]
    [InlineData("{ \"a\": 27 1/2 }", "a number is not written as JSON")]
    [InlineData("{ \"a\": .5 }", "a number is not written as JSON")]
    [InlineData("{ \"a\": 05 }", "a number is not written as JSON")]
    [InlineData("// a course\n{}", "a comment")]
    [InlineData("{ \"a\": \"b\nc\" }", "a line break or tab inside a text")]
    [InlineData("{ \"a\": \"\\x\" }", "a backslash")]
    [InlineData("{ \"a\": \"\\ud800\" }", "half of a character")]
    [InlineData("{ \"\\udc00\": 1 }", "half of a character")]
    [InlineData("{} {}", "")]
    public void What_is_no_document_is_refused_in_plain_words(string text, string problem)
    {
        var error = Files.Errors(DocumentReader.ReadCourse(text))[0];
        Assert.Equal("$", error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.NotNull(error.Line);
        Assert.DoesNotContain("LineNumber", error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_syntax_error_has_its_line_and_column()
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse("{\n  \"format\": \"stilewright/course\",\n  \"näme\": oak\n}")));
        Assert.Equal((3, 11), (error.Line, error.Column));
    }

    [Theory]
    [InlineData("\"format\": \"stilewright/course\", ", "", "$.format", "\"format\" is missing")]
    [InlineData("stilewright/course", "stilewright/standard", "$.format", "another kind of file, stilewright/standard")]
    [InlineData("stilewright/course", "something/else", "$.format", "unknown format \"something/else\"")]
    [InlineData("\"stilewright/course\"", "1", "$.format", "a number stands here")]
    [InlineData("\"version\": 2", "\"version\": 3", "$.version", "made by a newer program: it is of version 3, and this program reads up to 2")]
    [InlineData("\"version\": 2", "\"version\": 0", "$.version", "not a whole number from 1")]
    [InlineData("\"version\": 2", "\"version\": \"2\"", "$.version", "not a whole number from 1")]
    [InlineData("\"version\": 2,", "", "$.version", "\"version\" is missing")]
    public void A_file_says_what_it_is(string sound, string faulty, string path, string problem)
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(Files.Course.Replace(sound, faulty, StringComparison.Ordinal))));
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_newer_file_is_not_judged_by_what_this_program_knows() =>
        Assert.Contains("get a newer program", Assert.Single(Files.Errors(DocumentReader.ReadCourse("""{ "format": "stilewright/course", "version": 7, "new": true }"""))).Fix, StringComparison.Ordinal);

    [Fact]
    public void Files_that_are_not_utf8_are_refused()
    {
        byte[] latin = [.. Encoding.Latin1.GetBytes(Files.Course.Replace("Autumn", "Herbst für alle", StringComparison.Ordinal))];
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(latin)));
        Assert.Contains("not UTF-8", error.Problem, StringComparison.Ordinal);
        Assert.Equal(3, error.Line);
        Assert.Contains("not UTF-8", Assert.Single(Files.Errors(DocumentReader.ReadCourse(new byte[] { 0xFF, 0xFE, 0x7B, 0x00 }))).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_over_8_MB_are_refused()
    {
        var text = Files.Course.Replace("Autumn course", new string('a', DocumentReader.MostBytes), StringComparison.Ordinal);
        Assert.Contains("larger than 8 MB", Assert.Single(Files.Errors(DocumentReader.ReadCourse(text))).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(64, false)]
    [InlineData(65, true)]
    [InlineData(100_000, true)]
    public void Nesting_is_limited(int depth, bool isRefused)
    {
        var error = Files.Errors(DocumentReader.ReadCourse(new string('[', depth) + new string(']', depth)))[0];
        Assert.Equal(isRefused, error.Problem.Contains("more than 64 deep", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_with_thousands_of_faults_lists_a_thousand_and_says_how_many_more()
    {
        var text = Files.Course.Replace("\"projects\": [", $"\"projects\": [{string.Concat(Enumerable.Repeat("0,", 5000))}", StringComparison.Ordinal);
        var errors = Files.Errors(DocumentReader.ReadCourse(text));
        Assert.Equal(1001, errors.Count);
        Assert.Equal("4000 more errors are not listed", errors[^1].Problem);
    }

    [Fact]
    public void Numbers_of_benches_differ_and_designs_of_one_project_are_not_another_s()
    {
        var course = Files.Read(Files.Course);
        var design = course.Designs[0];
        var first = course.Projects[0] with { Designs = [design with { Id = "own" }] };
        var piece = new Piece("case-2", "Case", [new Face("face-2", FaceSide.Front, null, [], [new StatedFront("front-2", first.Pieces[0].Faces[0].Openings[0].Readings!.WidthTop!.Value, first.Pieces[0].Faces[0].Openings[0].Readings!.HeightLeft!.Value, "own", null, null, SettingValues.None)])]);
        var second = first with { Id = "bench-2", Designs = [], Pieces = [piece] };
        var errors = Files.Errors(DocumentReader.ReadCourse(DocumentWriter.Write(course with { Projects = [first, second] })));
        Assert.Equal(["$.projects[1].bench", "$.projects[1].pieces[0].faces[0].fronts[0].design"], errors.Select(error => error.Path));
        Assert.Contains("bench 1 is already used at $.projects[0].bench", errors[0].Problem, StringComparison.Ordinal);
        Assert.Contains("belongs to another project", errors[1].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_standard_does_not_have_is_told_with_what_it_has()
    {
        var text = Files.Course.Replace("\"cutters\": \"cope-and-stick\"", "\"cutters\": \"cope-and-stik\"", StringComparison.Ordinal)
            .Replace("\"stock\": \"ply\"", "\"stock\": \"panel\"", StringComparison.Ordinal)
            .Replace("\"stock\": \"four-quarter\"", "\"stock\": \"eight-quarter\"", StringComparison.Ordinal);
        var errors = References.Check(Files.Read(text), ShippedStandards.Inch);
        Assert.Equal(["$.designs[0].stock", "$.designs[0].cutters", "$.designs[0].panel.stock"], errors.Select(error => error.Path));
        Assert.Contains("no stock \"eight-quarter\" in the house standard inch", errors[0].Problem, StringComparison.Ordinal);
        Assert.Contains("did you mean cope-and-stick?", errors[1].Fix, StringComparison.Ordinal);
        Assert.Contains("solid, but the panel is sheet", errors[2].Problem, StringComparison.Ordinal);
        Assert.Contains("sheet here: ply", errors[2].Fix, StringComparison.Ordinal);
    }

    [Fact]
    public void The_format_of_a_file_is_told_before_it_is_read()
    {
        Assert.Same(DocumentFormat.Course, DocumentReader.FormatOf(Encoding.UTF8.GetBytes(Files.Course)));
        Assert.Same(DocumentFormat.Standard, DocumentReader.FormatOf(Encoding.UTF8.GetBytes(Files.Standard)));
        Assert.Same(DocumentFormat.HandedOut, DocumentReader.FormatOf(Encoding.UTF8.GetBytes(Files.HandedOut)));
        Assert.Null(DocumentReader.FormatOf("{ \"format\": \"else\" }"u8));
        Assert.Null(DocumentReader.FormatOf("[1"u8));
    }
}
