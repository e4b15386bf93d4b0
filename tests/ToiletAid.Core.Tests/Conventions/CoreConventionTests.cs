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

    [Fact]
    public void Every_evidence_id_in_the_source_exists_and_every_entry_is_used()
    {
        var table = BuiltIn.Evidence();
        string[] roots = [.. table.Ids.Select(id => id[..id.IndexOf('.', StringComparison.Ordinal)]).Distinct()];
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (string file in new[] { Repository.Path("src", "ToiletAid.Core"), Repository.Path("src", "ToiletAid.App", "Wording") }.SelectMany(d => Directory.EnumerateFiles(d, "*.cs", SearchOption.AllDirectories)).Where(f => Path.GetFileName(Path.GetDirectoryName(f)) is not ("Hand" or "Reach")))
        {
            used.UnionWith(Quoted().Matches(File.ReadAllText(file)).Select(m => m.Groups["id"].Value).Where(q => roots.Contains(q.Split('.')[0])));
        }

        used.UnionWith(BuiltIn.Rules().All.SelectMany(r => Compared().Matches(r.Exposed + " " + r.Brings)).Select(m => m.Groups["id"].Value));

        // A quoted text that ends in a full stop is the front of a family of ids, one for each answer.
        string[] families = [.. used.Where(u => u.EndsWith('.'))];
        Assert.DoesNotContain(used, u => !u.EndsWith('.') && !table.Ids.Contains(u));
        Assert.DoesNotContain(families, f => !table.Ids.Any(id => id.StartsWith(f, StringComparison.Ordinal)));
        Assert.DoesNotContain(table.Ids, id => !used.Contains(id) && !families.Any(f => id.StartsWith(f, StringComparison.Ordinal)));
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

    [GeneratedRegex("\"(?<id>[a-z]+\\.[a-z0-9.-]*)\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Quoted();
}
