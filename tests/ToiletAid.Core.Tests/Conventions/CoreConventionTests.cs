using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using ToiletAid.App.Files;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Tests.Conventions;

public sealed partial class CoreConventionTests
{
    private static readonly Assembly Core = typeof(KnowledgeBase).Assembly;

    [Fact]
    public void Core_references_only_the_base_library() =>
        Assert.Empty(Core.GetReferencedAssemblies().Where(a => !a.Name!.StartsWith("System.", StringComparison.Ordinal)).Select(a => a.Name));

    [Fact]
    public void Core_knows_no_json() =>
        Assert.DoesNotContain("System.Text.Json", Core.GetReferencedAssemblies().Select(a => a.Name));

    [Fact]
    public void Every_public_class_is_sealed_static_or_abstract() =>
        Assert.Empty(Core.GetExportedTypes().Where(t => t.IsClass && !t.IsSealed && !t.IsAbstract).Select(t => t.Name));

    [Fact]
    public void No_public_type_has_a_settable_property() =>
        Assert.Empty(
            from type in Core.GetExportedTypes()
            from property in type.GetProperties()
            where property.GetIndexParameters().Length == 0
            let set = property.SetMethod
            where set is { IsPublic: true } && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
            select $"{type.Name}.{property.Name}");

    /// <summary>That code and rules name no entry that is not there is held when the data are loaded; see <see cref="NamedIdTests"/>.</summary>
    [Fact]
    public void Every_entry_of_the_evidence_is_used()
    {
        var knowledge = BuiltIn.Knowledge();
        var used = EvidenceIds.All.Select(id => id.Text).ToHashSet(StringComparer.Ordinal);
        used.UnionWith(EvidenceIds.ByOption.SelectMany(f => knowledge.Questions[f.Question].Options.Select(o => f[o.Id].Text)));
        used.UnionWith(knowledge.Rules.All.SelectMany(r => Compared().Matches(r.Exposed + " " + r.Brings)).Select(m => m.Groups["id"].Value));

        // How far measuring twice may move a number, by the question that asks for it.
        used.UnionWith(knowledge.Questions.All.Where(q => q.Number is not null).Select(q => "error." + q.Id));
        Assert.DoesNotContain(knowledge.Evidence.Ids, id => !used.Contains(id.Text));
    }

    [Fact]
    public void Every_named_entry_of_the_evidence_is_looked_up()
    {
        string[] source = [.. Directory.EnumerateFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories).Select(File.ReadAllText)];
        string[] names = [.. typeof(EvidenceIds).GetFields().Select(f => f.Name)];
        Assert.NotEmpty(names);
        Assert.DoesNotContain(names, n => !source.Any(s => Regex.IsMatch(s, $@"\bEvidenceIds\.{n}\b", RegexOptions.None, TimeSpan.FromSeconds(10))));
    }

    [Fact]
    public void Every_number_of_the_catalogue_and_the_evidence_says_where_it_comes_from()
    {
        var evidence = BuiltIn.Evidence();
        var numbers = evidence.Ids.Select(id => evidence[id]).Concat(BuiltIn.Aids().Aids.SelectMany(a => Numbers(a)));

        Assert.All(numbers, n =>
        {
            Assert.NotEmpty(n.Source);
            Assert.InRange(n.Value, n.Low, n.High);
        });
    }

    private static IEnumerable<Sourced> Numbers(object of) =>
        of.GetType().GetProperties().Where(p => p.PropertyType == typeof(Sourced)).Select(p => (Sourced?)p.GetValue(of)).OfType<Sourced>();

    [GeneratedRegex(">(?<id>[a-z]+\\.[a-z0-9.-]*)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Compared();
}
