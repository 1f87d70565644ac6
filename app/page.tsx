export default function StartPage() {
  return (
    <div className="column">
      <h1>Read the Wall</h1>
      <p>Look at a wall. Measure it. Say what is wrong with it.</p>
    </div>
  );
}
