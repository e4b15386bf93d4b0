using System.Text.Json;
using Firely.Fhir.Validation;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;
using Hl7.Fhir.Specification.Source;
using Hl7.Fhir.Specification.Terminology;
using ToiletAid.App.Documents;
using ToiletAid.Core.Quantities;
using FhirBundle = Hl7.Fhir.Model.Bundle;

namespace ToiletAid.Acceptance.Tests.Documents;

/// <summary>The record, judged by another implementation of FHIR R4 with the definitions that HL7 publishes.</summary>
public sealed class RecordTests(ITestOutputHelper output)
{
    private static readonly Lazy<Validator> Validator = new(() =>
    {
        var source = new CachedResolver(ZipSource.CreateValidationSource());
        return new(source, new LocalTerminologyService(source));
    });

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void Records_are_valid_by_the_published_definitions(string name)
    {
        var outcome = Validator.Value.Validate(Read(name));
        foreach (var issue in outcome.Issue)
        {
            output.WriteLine($"{issue.Severity}: {issue.Details?.Text} at {string.Join(", ", issue.Expression)}");
        }

        Assert.DoesNotContain(outcome.Issue, i => i.Severity is OperationOutcome.IssueSeverity.Error or OperationOutcome.IssueSeverity.Fatal);
    }

    [Fact]
    public void A_record_with_a_trial_is_valid_and_has_levels_goal_and_outcome()
    {
        var bundle = new FhirJsonDeserializer().Deserialize<FhirBundle>(VisitDocuments.Record(Papers.Visits("a-512-thawing-shoulder")));
        var resources = bundle.Entry.Select(e => e.Resource).ToList();

        Assert.DoesNotContain(Validator.Value.Validate(bundle).Issue, i => i.Severity is OperationOutcome.IssueSeverity.Error or OperationOutcome.IssueSeverity.Fatal);
        var levels = resources.OfType<Observation>().Where(o => o.Code.Coding.Any(c => c.Code == "83228-7")).ToList();
        Assert.Equal(["LA27996-0", "LA27993-7"], levels.Select(o => ((CodeableConcept)o.Value!).Coding[0].Code));
        Assert.Equal("LA27993-7", ((CodeableConcept)resources.OfType<Goal>().Single().Target[0].Detail!).Coding[0].Code);
        var outcomes = resources.OfType<CarePlan>().Single().Activity[0].OutcomeReference.Select(r => r.Reference).ToList();
        var tries = bundle.Entry.Where(e => outcomes.Contains(e.FullUrl)).Select(e => (Observation)e.Resource!).ToList();
        Assert.Equal(2, tries.Count);
        Assert.Contains("dry and clothed", tries[0].Code.Text, StringComparison.Ordinal);
        Assert.Contains(tries[1].Component, c => c.Value is Quantity { Value: 6, Code: "min" });
        Assert.Contains(tries[0].Component, c => c.Value is CodeableConcept { Text: "Steps were forgotten or mixed up" });
    }

    [Fact]
    public void The_judge_refuses_a_record_that_is_wrong()
    {
        var bundle = Read("k-014-stiff-shoulder");
        bundle.Entry.Select(e => e.Resource).OfType<DeviceRequest>().Single().Intent = null;

        Assert.Contains(Validator.Value.Validate(bundle).Issue, i => i.Severity == OperationOutcome.IssueSeverity.Error);
    }

    [Fact]
    public void Every_reference_inside_a_record_leads_to_one_of_its_entries()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            using var json = JsonDocument.Parse(VisitDocuments.Record(Papers.About(name)));
            string[] entries = [.. json.RootElement.GetProperty("entry").EnumerateArray().Select(e => e.GetProperty("fullUrl").GetString()!)];

            Assert.Equal(entries.Length, entries.Distinct().Count());
            Assert.All(References(json.RootElement), r => Assert.Contains(r, entries));
        }
    }

    [Fact]
    public void Nothing_is_ordered()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            var resources = Read(name).Entry.Select(e => e.Resource).ToList();
            Assert.All(resources.OfType<DeviceRequest>(), d => Assert.Equal((RequestStatus.Draft, RequestIntent.Proposal), (d.Status, d.Intent)));
            Assert.All(resources.OfType<CarePlan>(), p => Assert.Equal((RequestStatus.Draft, CarePlan.CarePlanIntent.Proposal), (p.Status, p.Intent)));
            Assert.All(resources.OfType<Goal>(), g => Assert.Equal(Goal.GoalLifecycleStatus.Proposed, g.LifecycleStatus));
        }
    }

    [Fact]
    public void A_red_flag_leaves_no_proposal_and_is_told()
    {
        var resources = Read("w-701-red-flag").Entry.Select(e => e.Resource).ToList();

        Assert.DoesNotContain(resources, r => r is DeviceRequest or CarePlan or Hl7.Fhir.Model.Goal);
        Assert.Contains(resources.OfType<Observation>(), o => o.Code.Text == "Red flag" && ((FhirString)o.Value!).Value!.Contains("emergency", StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_stand_in_the_proposal()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            var notes = Read(name).Entry.Select(e => e.Resource).OfType<DeviceRequest>().SelectMany(d => d.Note).Select(n => n.Text).ToList();
            Assert.All(Papers.About(name).Chosen?.Cautions ?? [], c => Assert.Contains(notes, n => n!.EndsWith(App.Wording.AdviceText.Sentence(c), StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void The_same_visit_gives_the_same_record()
    {
        string path = DemoPeople.File("m-207-one-hand");

        Assert.Equal(VisitDocuments.Record(Papers.About("m-207-one-hand")), Cli.Run("", "report", path, "--kind", "record").Output);
    }

    [Fact]
    public void Units_are_codes_that_another_reader_of_the_unified_code_takes_for_the_same_size()
    {
        var table = UcumTable.Load();
        foreach (var unit in Units.All.Where(u => UcumCodes.Of(u.Symbol) is not null and not "1"))
        {
            string code = UcumCodes.Of(unit.Symbol)!;
            if (unit.Dimension == Dimension.Temperature)
            {
                Assert.True(table.Has(code), code);
            }
            else
            {
                // Its base of mass is the gram; our plain numbers of years and of times a day are not converted.
                double scale = unit.Dimension is Dimension.Mass or Dimension.Force ? 1000 : 1;
                double theirs = table.InBaseUnits(code);
                Assert.True(unit.Dimension == Dimension.Number || Math.Abs((theirs / (unit.ToSi(1) * scale)) - 1) < 1e-9, $"{code}: {theirs}");
            }
        }
    }

    private static IEnumerable<string> References(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => p.Name == "reference" && p.Value.ValueKind == JsonValueKind.String ? [p.Value.GetString()!] : References(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(References),
        _ => [],
    };

    private static FhirBundle Read(string name) => new FhirJsonDeserializer().Deserialize<FhirBundle>(VisitDocuments.Record(Papers.About(name)));
}
