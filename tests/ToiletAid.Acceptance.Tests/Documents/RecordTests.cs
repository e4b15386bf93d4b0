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
    private static readonly DateTimeOffset Made = new(2026, 3, 9, 14, 30, 0, TimeSpan.Zero);

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
        var bundle = new FhirJsonDeserializer().Deserialize<FhirBundle>(VisitDocuments.Record(Papers.Visits("a-512-thawing-shoulder"), Made));
        var resources = bundle.Entry.Select(e => e.Resource).ToList();

        Assert.DoesNotContain(Validator.Value.Validate(bundle).Issue, i => i.Severity is OperationOutcome.IssueSeverity.Error or OperationOutcome.IssueSeverity.Fatal);
        var levels = resources.OfType<Observation>().Where(o => o.Code.Text?.StartsWith("Toileting hygiene", StringComparison.Ordinal) == true).ToList();
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
            using var json = JsonDocument.Parse(VisitDocuments.Record(Papers.About(name), Made));
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
            Assert.All(resources.OfType<ServiceRequest>(), d => Assert.Equal((RequestStatus.Draft, RequestIntent.Proposal), (d.Status, d.Intent)));
            Assert.All(resources.OfType<CarePlan>(), p => Assert.Equal((RequestStatus.Draft, CarePlan.CarePlanIntent.Proposal), (p.Status, p.Intent)));
            Assert.All(resources.OfType<Goal>(), g => Assert.Equal(Goal.GoalLifecycleStatus.Proposed, g.LifecycleStatus));
        }
    }

    [Fact]
    public void A_red_flag_leaves_no_proposal_and_is_told()
    {
        var resources = Read("w-701-red-flag").Entry.Select(e => e.Resource).ToList();

        Assert.DoesNotContain(resources, r => r is DeviceRequest or ServiceRequest or CarePlan or Hl7.Fhir.Model.Goal);
        var flag = resources.OfType<Flag>().Single();
        Assert.StartsWith("Red flag, urgent.", flag.Code.Text, StringComparison.Ordinal);
        Assert.Contains("emergency", flag.Code.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_caution_is_a_flag()
    {
        foreach (string name in DemoPeople.Names.Select(n => n.Data))
        {
            string?[] flags = [.. Read(name).Entry.Select(e => e.Resource).OfType<Flag>().Select(f => f.Code.Text)];
            Assert.All(Papers.About(name).Chosen?.Cautions ?? [], c => Assert.Contains(flags, f => f!.EndsWith(App.Wording.AdviceText.Sentence(c), StringComparison.Ordinal)));
        }
    }

    [Theory]
    [InlineData("k-014-stiff-shoulder", true)]
    [InlineData("h-060-in-bed", false)]
    public void A_device_is_asked_for_only_where_there_is_one(string name, bool device)
    {
        var resources = Read(name).Entry.Select(e => e.Resource).ToList();

        Assert.Equal(device ? 1 : 0, resources.OfType<DeviceRequest>().Count());
        Assert.Equal(device ? 0 : 1, resources.OfType<ServiceRequest>().Count());
    }

    [Fact]
    public void Height_and_weight_are_vital_signs_with_their_way_of_finding_out()
    {
        var signs = Read("k-014-stiff-shoulder").Entry.Select(e => e.Resource).OfType<Observation>().Where(o => o.Category.Any(c => c.Coding.Any(k => k.Code == "vital-signs"))).ToList();

        // HL7 FHIR R4, profiles bodyheight and bodyweight: these LOINC codes and UCUM units.
        Assert.Equal([("8302-2", "cm", "measured"), ("29463-7", "kg", "measured")], signs.Select(o => (o.Code.Coding[0].Code!, ((Quantity)o.Value!).Code!, o.Method!.Text!)));
    }

    [Fact]
    public void What_was_computed_is_preliminary_and_what_was_found_is_final()
    {
        var observations = Read("k-014-stiff-shoulder").Entry.Select(e => e.Resource).OfType<Observation>().ToList();

        Assert.All(observations, o => Assert.Equal(o.Code.Text!.Contains("computed", StringComparison.Ordinal) ? ObservationStatus.Preliminary : ObservationStatus.Final, o.Status));
        Assert.Equal(2, observations.Count(o => o.Status == ObservationStatus.Preliminary));
    }

    [Fact]
    public void The_person_is_the_clinics_code_and_the_record_tells_which_program_made_it_when()
    {
        var bundle = Read("k-014-stiff-shoulder");
        var resources = bundle.Entry.Select(e => e.Resource).ToList();
        var person = resources.OfType<Patient>().Single();
        var origin = resources.OfType<Provenance>().Single();

        Assert.Equal("K-014", person.Identifier.Single().Value);
        Assert.Empty(person.Name);
        Assert.Equal(Made, origin.Recorded);
        Assert.StartsWith("toiletaid ", origin.Agent.Single().Who.Display, StringComparison.Ordinal);
        string?[] told = [.. origin.Target.Select(t => t.Reference)];
        Assert.All(bundle.Entry.Where(e => e.Resource is not (Patient or Provenance or Questionnaire)), e => Assert.Contains(e.FullUrl, told));
    }

    [Fact]
    public void The_same_visit_gives_the_same_record()
    {
        string path = DemoPeople.File("m-207-one-hand");

        string[] here = Lines(VisitDocuments.Record(Papers.About("m-207-one-hand"), Made)), there = Lines(Cli.Run("", "report", path, "--kind", "record").Output);
        Assert.Equal(here, there);

        static string[] Lines(string record) => [.. record.Split('\n').Where(l => !l.Contains("\"recorded\":", StringComparison.Ordinal))];
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

    private static FhirBundle Read(string name) => new FhirJsonDeserializer().Deserialize<FhirBundle>(VisitDocuments.Record(Papers.About(name), Made));
}
