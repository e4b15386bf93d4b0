using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using ToiletAid.App.Files;
using ToiletAid.App.Protection;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Whatever stands in a file, it is accepted or refused with sentences: no crash, no hang, no memory without bound.</summary>
public sealed partial class ProfileFuzzTests(ITestOutputHelper output)
{
    private const int Mutants = 100_000;
    private const int MutantsByDefault = 5_000;
    /// <summary>Tells a hang; the slowest one is written out. Other tests take the processor at the same time.</summary>
    private const int MostMilliseconds = 60_000;
    private const int MostBytesOfMemory = 64 * 1024 * 1024;
    private const int LongestSentence = 1500;

    private static readonly ProfileFile Files = new(BuiltIn.Questions());
    private static readonly ProfileWriter Writer = new(BuiltIn.Questions());

    public static TheoryData<string, byte[]> Hostile => new()
    {
        { "nothing", [] },
        { "NUL", [0] },
        { "many NUL", new byte[100_000] },
        { "deep lists", Text(new string('[', 200_000)) },
        { "deep objects", Text(string.Concat(Enumerable.Repeat("{\"a\":", 200_000))) },
        { "deep answer", Text("""{"format":1,"person":"K-014","sessions":[{"date":"2026-03-09","depth":"quick","answers":{"grasp":""" + new string('[', 5000) + new string(']', 5000) + "}}]}") },
        { "format of a million digits", Text("{\"format\":" + new string('9', 1_000_000) + ",\"person\":\"K-014\",\"sessions\":[]}") },
        { "huge exponent", Profile("\"stature\":{\"value\":1e999999999,\"unit\":\"cm\",\"how\":\"measured\"}") },
        { "tiny exponent", Profile("\"stature\":{\"value\":1e-999999999,\"unit\":\"cm\",\"how\":\"measured\"}") },
        { "duplicate member", Profile("\"grasp\":{\"value\":\"whole-hand\",\"value\":\"none\",\"how\":\"observed\"}") },
        { "duplicate answer", Profile("\"grasp\":{\"value\":\"not-known\"},\"grasp\":{\"value\":\"not-known\"}") },
        { "half a pair", Profile("\"grasp\":{\"value\":\"\\ud800\",\"how\":\"observed\"}") },
        { "half a pair in a name", Profile("\"\\ud800\":{\"value\":\"a\",\"how\":\"observed\"}") },
        { "escape sequence", Profile("\"\\u001b[31mred\":{\"value\":\"\\u001b]0;title\\u0007\",\"how\":\"\\u202eobserved\"}") },
        { "not UTF-8", [.. Text("{\"format\":1,\"person\":\""), 0xFF, 0xFE, 0x80, .. Text("\"}")] },
        { "UTF-16", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("{\"format\":1}")).ToArray() },
        { "UTF-32", Encoding.UTF32.GetBytes("{\"format\":1}") },
        { "half a million unknown questions", Profile(string.Join(',', Enumerable.Range(0, 400_000).Select(i => $"\"q{i}\":0"))) },
        { "a hundred thousand broken sessions", Text("{\"format\":1,\"person\":\"K-014\",\"sessions\":[" + string.Join(',', Enumerable.Repeat("{}", 100_000)) + "]}") },
        { "a hundred thousand items", Profile("\"precautions\":{\"value\":[" + string.Join(',', Enumerable.Repeat("\"sternal\"", 100_000)) + "],\"how\":\"reported\"}") },
        { "a line of three megabytes", Profile("\"grasp\":{\"value\":\"" + new string('x', 3_000_000) + "\",\"how\":\"observed\"}") },
        { "a name of three megabytes", Profile("\"" + new string('x', 3_000_000) + "\":{\"value\":\"a\",\"how\":\"observed\"}") },
        { "protected with nothing in it", Text("{\"protected\":\"\",\"encrypted_key\":\"\",\"iv\":\"\",\"ciphertext\":\"\",\"tag\":\"\"}") },
        { "protected with half a pair in a name", Text("{\"prot\\ud800ected\":\"\",\"iv\":\"\"}") },
        { "half a pair in the first name", Text("{\"form\\ud800at\":1}") },
        { "protected with lists", Text("{\"protected\":[],\"ciphertext\":{}}") },
        { "protected with endless rounds", Text("{\"protected\":\"e30\",\"header\":{\"alg\":\"PBES2-HS512+A256KW\",\"enc\":\"A256GCM\",\"p2c\":2147483647,\"p2s\":\"AAAAAAAAAAAAAAAAAAAAAA\"},\"encrypted_key\":\"" + new string('A', 54) + "\",\"iv\":\"AAAAAAAAAAAAAAAA\",\"ciphertext\":\"AA\",\"tag\":\"AAAAAAAAAAAAAAAAAAAAAA\"}") },
        { "compact with nothing in it", Text("eyJ....") },
        { "compact with too much", Text("eyJ" + new string('.', 100_000)) },
    };

    [Theory]
    [MemberData(nameof(Hostile))]
    public void A_hostile_file_is_refused_with_sentences(string what, byte[] bytes)
    {
        var read = Read(bytes, what);

        Assert.Null(read.Value);
    }

    [Fact]
    public void Mutants_are_accepted_or_refused_with_sentences()
    {
        ulong seed = TestRun.Seed;
        int count = TestRun.Times(Mutants, MutantsByDefault);
        byte[][] seeds = [.. Directory.GetFiles(DemoPeople.Folder, "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllBytes), Writer.Sealed(new("K-014", [NumberedVisit.Session(1), NumberedVisit.Session(2)]), 3), .. ProtectedSeeds()];
        var mutator = new Mutator(new Random((int)(seed % int.MaxValue)), seeds);
        var codes = new SortedDictionary<string, int>(StringComparer.Ordinal);
        int accepted = 0;
        long slowest = 0, most = 0;
        for (int i = 0; i < count; i++)
        {
            byte[] bytes = mutator.Next();
            long start = Stopwatch.GetTimestamp(), before = GC.GetAllocatedBytesForCurrentThread();
            var read = Read(bytes, $"seed {seed}, mutant {i}");
            slowest = Math.Max(slowest, (long)Stopwatch.GetElapsedTime(start).TotalMicroseconds);
            most = Math.Max(most, GC.GetAllocatedBytesForCurrentThread() - before);
            if (read.TryGet(out var stored))
            {
                accepted++;
                byte[] again = Writer.Sealed(stored.Profile, 1);
                Assert.True(Files.Open(again, passphrase: null).TryGet(out var same), $"seed {seed}, mutant {i} is accepted, written, and refused");
                Assert.Equal(again, Writer.Sealed(same.Profile, 1));
                continue;
            }

            codes[read.Issues[0].Code] = codes.GetValueOrDefault(read.Issues[0].Code) + 1;
        }

        output.WriteLine($"{count} mutants of {seeds.Length} files, {accepted} accepted, slowest {slowest} microseconds, most memory {most} bytes");
        output.WriteLine(string.Join(", ", codes.Select(c => $"{c.Key} {c.Value}")));

        // Mutants that are all accepted, or all refused for one reason, would show little.
        Assert.InRange(accepted, count / 100, count - (count / 100));
        Assert.InRange(codes.Count, 15, int.MaxValue);
    }

    [Fact]
    public void A_file_of_a_gigabyte_is_refused_without_being_read()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        using (var stream = File.Create(path))
        {
            stream.SetLength(1L << 30);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        var read = Files.Read(path);

        Assert.Equal("too-large", Assert.Single(read.Issues).Code);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1024 * 1024);
    }

    [Fact]
    public void A_line_of_a_gigabyte_on_standard_input_is_refused_in_bounded_memory()
    {
        using var endless = new LongLine(1L << 30);
        var splitter = new ToiletAidTui.Batch.LineSplitter(endless, ProfileReader.MostBytes);
        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.True(splitter.Read(out byte[]? line));
        Assert.Null(line);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, MostBytesOfMemory);
        Assert.False(splitter.Read(out _));
    }

    private static Checked<StoredProfile> Read(byte[] bytes, string what)
    {
        long start = Stopwatch.GetTimestamp(), before = GC.GetAllocatedBytesForCurrentThread();
        Checked<StoredProfile> read;
        try
        {
            read = Files.Open(bytes, () => "wrong but long enough");
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"{what}: {e.GetType().Name} for {Convert.ToBase64String(bytes.AsSpan(0, Math.Min(bytes.Length, 6000)))}", e);
        }

        Assert.True(Stopwatch.GetElapsedTime(start).TotalMilliseconds < MostMilliseconds, $"{what} took {Stopwatch.GetElapsedTime(start)}");
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < MostBytesOfMemory, $"{what} took {GC.GetAllocatedBytesForCurrentThread() - before} bytes");
        if (read.Value is null)
        {
            Assert.NotEmpty(read.Issues);
            Assert.All(read.Issues, i => Assert.False(Unspeakable().IsMatch(i.Sentence("a.json")), $"{what}: {i.Sentence("a.json")}"));
            Assert.All(read.Issues, i => Assert.InRange(i.Sentence("a.json").Length, 10, LongestSentence));
        }

        return read;
    }

    /// <summary>With as few rounds as are taken, or the mutants would take hours.</summary>
    private static IEnumerable<byte[]> ProtectedSeeds()
    {
        byte[] plain = Writer.Sealed(new("K-014", [NumberedVisit.Session(1)]), 1);
        yield return new Protector("wrong but long enough", iterations: 1000).File(plain);
        yield return Text(new Protector("wrong but long enough", iterations: 1000).Compact(plain));
        yield return new Protector("another passphrase", iterations: 1000).File(plain);
    }

    private static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] Profile(string answers) =>
        Text("{\"format\":1,\"person\":\"K-014\",\"sessions\":[{\"date\":\"2026-03-09\",\"depth\":\"quick\",\"answers\":{" + answers + "}}]}");

    [GeneratedRegex(@"[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Unspeakable();
}
