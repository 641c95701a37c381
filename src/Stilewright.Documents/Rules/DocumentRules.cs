namespace Stilewright.Documents.Rules;

/// <summary>The rules that need more than one field: each looks at one record and what it holds.</summary>
internal static class DocumentRules
{
    private static readonly ILookup<Type, Rule> ByRecord = new[]
    {
        For<Projects.Face>(FaceRules.NeighboursAreOnTheSameFace),
        For<Projects.Face>(FaceRules.AppliedEndsAreOnEnds),
        For<Projects.Run>(FaceRules.FacesStandOnceInARun),
        For<Projects.AppliedEnd>(FaceRules.EndsAtTheToeHaveItsHeight),
        For<Projects.FaceLayout>(LayoutRules.OutermostSpaceHasNoSize),
        For<Projects.Space>(LayoutRules.SpaceIsOneThing),
        For<Projects.Space>(LayoutRules.LayoutTellsTheNeighbours),
        For<Projects.Division>(LayoutRules.MembersAreOneWidthOrListed),
        For<Projects.Opening>(OpeningRules.PlanedToFitIsInset),
        For<Projects.DoorFilling>(FillingRules.OneLeafTakesTheRest),
        For<Projects.DoorFilling>(FillingRules.LappedEdgesAreOfAPair),
        For<Projects.DoorFilling>(FillingRules.LeavesHangOnKnownLeaves),
        For<Projects.DoorFilling>(FillingRules.LeavesOverrideOnlyWhatIsTheirs),
        For<Projects.Filling>(FillingRules.EdgesAreOfOverlayFronts),
        For<Projects.DrawerFilling>(FillingRules.HeightsMatchTheCount),
        For<Projects.DrawerFilling>(FillingRules.RemainderIsInTheBank),
        For<Projects.ProportionalHeights>(FillingRules.SharesAreAboveZero),
        For<Projects.GivenHeights>(FillingRules.OneFrontTakesTheRest),
        For<Projects.DoorDesign>(DesignRules.FramesHaveCuttersAndPanels),
        For<Projects.DoorDesign>(DesignRules.SlabsHaveNoFrame),
        For<Projects.DoorDesign>(DesignRules.RowsAndLightsExistOnce),
        For<Projects.DoorDesign>(DesignRules.MouldingsHaveAWidth),
        For<Projects.StileWidths>(DesignRules.StilesAreOneWidthOrTwo),
        For<Projects.MidRails>(DesignRules.MidRailsAreCountedOrPlaced),
        For<Projects.Arch>(DesignRules.ArchesHaveTheRiseTheyNeed),
        For<Projects.Arch>(DesignRules.ArchesSayOnlyWhatTheirFamilyHas),
        For<Projects.Arch>(DesignRules.ArchesAcrossAPairAreOne),
        For<Projects.Arch>(DesignRules.DrawnCurvesCanBeDrawn),
        For<Projects.LightFilling>(DesignRules.WoodPanelsHaveStock),
        For<Projects.LightFilling>(DesignRules.GlueAndGlazingAreWhereTheyCanBe),
        For<Shop.CutterSet>(StandardRules.CopeFitsTheGroove),
        For<Shop.CutterSet>(StandardRules.GrooveFitsTheStock),
        For<Shop.CutterSet>(StandardRules.StockRangeIsARange),
        For<Shop.RackPattern>(StandardRules.PatternsHaveARangeAndACurve),
        For<Shop.RackPattern>(StandardRules.PatternsSayOnlyWhatTheirFamilyHas),
        For<Shop.SpeciesEntry>(StandardRules.CoefficientsAreTwo),
        For<Shop.Climate>(StandardRules.ClimatesAreARangeOrSeasons),
        For<Prints.HandedOut>(HandedOutRules.PartsStandOnce),
        For<Shop.Stock>(StandardRules.SandingLeavesWood),
        For<Shop.Stock>(StandardRules.NominalThicknessIsKnown),
        For<Shop.HouseStandard>(HingeRules.SettingsNameWhatIsThere),
        For<Shop.HouseStandard>(HingeRules.HingesNameTablesThatAreThere),
        For<Shop.HingeKind>(HingeRules.HingesTellTheirOverlay),
        For<Shop.HingeKind>(HingeRules.CupsBelongToCupHinges),
        For<Shop.HingeKind>(HingeRules.ThicknessesAreARange),
        For<Shop.CupBoring>(HingeRules.DistancesAreARange),
        For<Shop.HingeCounts>(HingeRules.RowsRise),
        For<Shop.BoringMachine>(HingeRules.MachinesHaveStops),
        For<Shop.LabelSheet>(LabelSheetRules.LabelsFitOnThePaper),
        For<Shop.PrintMeasurement>(PrinterRules.PrintsWereNotFitted),
    }.ToLookup(rule => rule.Record);

    /// <summary>Every fault of this record; the records inside it have been checked on their own.</summary>
    public static IEnumerable<RuleFault> Check(object record, DocumentPath path)
    {
        for (var type = record.GetType(); type is not null && type != typeof(object); type = type.BaseType)
        {
            foreach (var rule in ByRecord[type])
                foreach (var fault in rule.Check(record, path))
                    yield return fault;
        }
    }

    private static Rule For<T>(Func<T, DocumentPath, IEnumerable<RuleFault>> check) => new(typeof(T), (record, path) => check((T)record, path));

    private sealed record Rule(Type Record, Func<object, DocumentPath, IEnumerable<RuleFault>> Check);
}
